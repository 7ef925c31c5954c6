using StudioKit.Planning;
using StudioKit.Planning.Session;
using StudioKit.Web.Results;
using StudioKit.Wording;

namespace StudioKit.Web.Engine.Telling;

/// <summary>Tells where lights stand and how the day goes.</summary>
internal static class OutdoorsTelling
{
    /// <summary>One card with its day.</summary>
    public static OutdoorsAnswer Of(Plan plan, ExposurePlan exposure, string drawing) => new(
        drawing,
        [.. plan.LightStands.Where(stand => stand.SetUp == exposure.SetUp && stand.Framing == exposure.Framing.Name)
            .Select(stand => $"{RoleText.Title(stand.Role)}: {StandText.Where(stand)}; {StandText.Held(stand)}.")],
        plan.Day is { } day ? DayText.Title(day) : "",
        [.. (plan.Day?.Hours ?? []).Select(Hour)],
        plan.Day is { } basis ? [DayText.Events(basis), DayText.Basis(basis)] : []);

    private static HourLine Hour(DayHour hour) => new(
        DayText.Time(hour.Minute),
        $"{DayText.Direction(hour.Azimuth)}, {PlanFormat.Degrees(hour.Height)} high",
        hour.ShadowOverHeight is null ? "" : DayText.Direction(hour.ShadowDirection),
        string.Join(" / ", hour.Lights.Select(DayText.Light)),
        DayText.SetUps(hour));
}
