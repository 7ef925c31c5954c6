using Spectre.Console;
using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>Where the lights about the subject stand, as tables on a terminal.</summary>
internal static class StandTables
{
    /// <summary>Writes the lights of one set-up, a row for each with all framings, as its place is the same in them all.</summary>
    public static void Write(IAnsiConsole console, string setUp, IReadOnlyList<LightStandPlan> stands)
    {
        if (stands.Count == 0)
        {
            return;
        }

        var table = TableConsole.Table($"{setUp}: where the lights stand", "light", "distance", "from", "from the subject", "held", "softness", "direction costs", "at fault");
        foreach (var light in stands.GroupBy(stand => stand.Place))
        {
            table.AddRow([.. Row([.. light]).Select(Markup.Escape)]);
        }

        console.Write(table);
    }

    private static string[] Row(IReadOnlyList<LightStandPlan> light) =>
    [
        $"{RoleText.Word(light[0].Role)}: {light[0].Flash}, {light[0].Modifier ?? "bare"}",
        DistanceFormat.Centimetres(light[0].Distance),
        StandText.Direction(light[0].From),
        StandText.Sides(light[0]),
        StandText.Held(light.MaxBy(stand => stand.ReachNeeded)!),
        $"{StandText.Word(light[0].Softness)}, {StandText.Angles(light[0])}",
        $"{light[0].DirectionLoss} stops",
        Faults(light),
    ];

    // The checks have them by framing, with what would mend them.
    private static string Faults(IReadOnlyList<LightStandPlan> light) => light.Count(stand => stand.Faults.Count > 0) is > 0 and var faulty
        ? string.Join(", ", light.SelectMany(stand => stand.Faults).Select(fault => MemberText.Of(fault.Kind).Replace('-', ' ')).Distinct(StringComparer.Ordinal)) + FormattableString.Invariant($" at {faulty} of {light.Count} framings")
        : "none";
}
