using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Sheets.Building;

/// <summary>Lengths as a builder reads them off a tape, in the units that the sheet is told in.</summary>
internal sealed record Measures(TextUnits Units)
{
    // Goes when the drawings that take it are told in the units of their scope.
#pragma warning disable CA1822
    public string Of(Length length) => PlanFormat.CutLength(length);

    public string Of(double millimetres) => PlanFormat.CutLength(Length.FromMillimeters(millimetres));

    public static string Metric(double millimetres) => PlanFormat.CutLength(Length.FromMillimeters(millimetres));

    public static string Inches(double millimetres) => InchText.ByRule(millimetres);
}
