using System.Text.Json.Serialization;

namespace StudioKit.Planning.Cutting.Reports;

/// <summary>Pieces that can't be cut, in plain numbers.</summary>
/// <param name="Label">The pieces' name.</param>
/// <param name="SideMm">Length of a bar's piece, width of a sheet's [mm].</param>
/// <param name="OtherSideMm">Height of a sheet's piece [mm]; none of a bar's.</param>
/// <param name="Count">How many are missing [1].</param>
/// <param name="Reason">Why.</param>
public sealed record ReportedUncut(
    string Label, double SideMm, [property: JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)] double? OtherSideMm, int Count, UncutReason Reason)
{
    /// <summary>The same pieces.</summary>
    internal static ReportedUncut From(UncutPiece piece) =>
        new(piece.Label, CutReport.Millimeters(piece.Side), piece.OtherSide is { } other ? CutReport.Millimeters(other) : null, piece.Count, piece.Reason);
}
