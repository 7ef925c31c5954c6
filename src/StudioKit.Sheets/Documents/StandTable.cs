using System.Globalization;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Planning.Tables;

namespace StudioKit.Sheets.Documents;

/// <summary>Where the lights about the subject stand, as a table for a spreadsheet.</summary>
internal static class StandTable
{
    /// <summary>Writes every light of every exposure.</summary>
    /// <param name="stands">The lights.</param>
    /// <returns>Comma-separated text as RFC 4180 has it; column heads end in their unit.</returns>
    /// <exception cref="ArgumentNullException">There are no lights to write.</exception>
    public static string Csv(IReadOnlyList<LightStandPlan> stands)
    {
        ArgumentNullException.ThrowIfNull(stands);
        return string.Concat(stands.Select(Row).Prepend(UnitCell.Row(
            "setUp", "framing", "role", "flash", "modifier", UnitCell.LengthHead("distance"), "clockHours", "azimuthDeg", "elevationDeg", UnitCell.LengthHead("right"), UnitCell.LengthHead("back"), UnitCell.LengthHead("up"), UnitCell.LengthHead("overGround"),
            "holder", "heldBy", UnitCell.LengthHead("reachNeeded"), "withinReach", "softness", "angleAcrossDeg", "angleUpDeg", "shadowDepthStops", "directionLossStops", "lensCoversShare", "faults")));
    }

    private static string Row(LightStandPlan stand) => UnitCell.Row(
        stand.SetUp,
        stand.Framing,
        MemberText.Of(stand.Role),
        stand.Flash,
        stand.Modifier ?? "",
        UnitCell.Of(stand.Distance, "0.##"),
        Number(stand.From.Hour),
        Number(stand.From.Azimuth.Degrees),
        Number(stand.From.Elevation.Degrees),
        UnitCell.Of(stand.Right, "0.##"),
        UnitCell.Of(stand.Back, "0.##"),
        UnitCell.Of(stand.Up, "0.##"),
        UnitCell.Of(stand.OverGround, "0.##"),
        stand.Holder ?? "",
        MemberText.Of(stand.HeldBy),
        UnitCell.Of(stand.ReachNeeded, "0.##"),
        stand.WithinReach ? "yes" : "no",
        MemberText.Of(stand.Softness),
        Number(stand.AngleAcross.Degrees),
        Number(stand.AngleUp.Degrees),
        Number(stand.ShadowDepth?.Value),
        Number(stand.DirectionLoss.Value),
        Number(stand.LensCovers),
        string.Join(' ', stand.Faults.Select(fault => MemberText.Of(fault.Kind))));

    private static string Number(double? value) => value is { } number ? number.ToString("0.##", CultureInfo.InvariantCulture) : "";
}
