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
        return string.Concat(stands.Select(Row).Prepend(CsvText.Row(
            "setUp", "framing", "role", "flash", "modifier", "distanceMm", "clockHours", "azimuthDeg", "elevationDeg", "rightMm", "backMm", "upMm", "overGroundMm",
            "holder", "heldBy", "reachNeededMm", "withinReach", "softness", "angleAcrossDeg", "angleUpDeg", "shadowDepthStops", "directionLossStops", "lensCoversShare", "faults")));
    }

    private static string Row(LightStandPlan stand) => CsvText.Row(
        stand.SetUp,
        stand.Framing,
        MemberText.Of(stand.Role),
        stand.Flash,
        stand.Modifier ?? "",
        Number(stand.Distance.Millimeters),
        Number(stand.From.Hour),
        Number(stand.From.Azimuth.Degrees),
        Number(stand.From.Elevation.Degrees),
        Number(stand.Right.Millimeters),
        Number(stand.Back.Millimeters),
        Number(stand.Up.Millimeters),
        Number(stand.OverGround.Millimeters),
        stand.Holder ?? "",
        MemberText.Of(stand.HeldBy),
        Number(stand.ReachNeeded.Millimeters),
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
