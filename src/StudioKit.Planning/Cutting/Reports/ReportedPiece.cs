namespace StudioKit.Planning.Cutting.Reports;

/// <summary>One piece on a bar in plain numbers.</summary>
/// <param name="Label">The piece's name.</param>
/// <param name="LengthMm">Finished length [mm].</param>
/// <param name="StartMm">Where it starts, from the squared end [mm].</param>
/// <param name="EndMm">Where it ends [mm].</param>
public sealed record ReportedPiece(string Label, double LengthMm, double StartMm, double EndMm);
