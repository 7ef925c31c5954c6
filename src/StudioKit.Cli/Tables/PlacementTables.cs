using Spectre.Console;
using StudioKit.Physics.Light.Placements;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Placing;

namespace StudioKit.Cli.Tables;

/// <summary>Where the flash below should go, as tables on a terminal.</summary>
internal static class PlacementTables
{
    // More rows of the frontier than this help nobody to choose.
    private const int MostFrontierRows = 8;

    public static void Write(PlacementPlan placement, CommandHost host)
    {
        var console = TableConsole.For(host);
        var table = TableConsole.Table(
            FormattableString.Invariant($"{placement.SetUp}: place of the flash below, {placement.Evaluated} candidates"),
            "", "flash", "panel", "under it", "right", "back", "aimed at", "energy", "uneven");
        table.AddRow(Row("kit now", placement.Own));
        if (placement.Recommended is { } best)
        {
            table.AddRow(Row("best", best));
        }

        if (placement.Nearest is { } nearest)
        {
            table.AddRow(Row("comes nearest", nearest));
        }

        foreach (var choice in Thinned(placement.Frontier))
        {
            table.AddRow(Row("frontier", choice));
        }

        console.Write(table);
        console.WriteLine("Energy in full-power flashes, averaged over the framings; \"uneven\" in stops, in the worst framing. Two flashes stand so far right and left.");
        WriteVerdict(console, placement);
        TableConsole.Notes(console, placement.Caveats);
    }

    private static void WriteVerdict(IAnsiConsole console, PlacementPlan placement)
    {
        if (placement.Advice is { } advice)
        {
            console.WriteLine($"No placement serves every framing. {advice}");
        }

        if (placement.EnergySaved is { } saved)
        {
            console.WriteLine($"The recommendation saves {MeasureFormat.Percent(Math.Round(saved, 2))} of the energy that the kit's own placement takes.");
        }
        else if (placement.Recommended is not null)
        {
            console.WriteLine($"The kit's own placement does not serve every framing: {Reason(placement.Own.Limit)}.");
        }

        if (placement.KitLines.Count > 0)
        {
            console.WriteLine("Lines to change in the kit:");
            TableConsole.Notes(console, placement.KitLines.Select(line => "  " + line));
        }
    }

    private static string[] Row(string what, PlacementChoice choice) =>
    [
        what,
        Markup.Escape(Flash(choice)),
        $"{PlanFormat.Millimetres(choice.PanelHeight)}, {(choice.Skirts ? "skirts" : "no skirts")}",
        PlanFormat.Millimetres(choice.Distance),
        (choice.Count == 2 ? "±" : "") + Signed(choice.OffsetRight),
        Signed(choice.OffsetBack),
        choice.AimBack is { } back ? $"{Signed(back)} back" : "straight up",
        choice.Limit is PlacementLimit.Geometry ? "–" : MeasureFormat.ThreeDigits(choice.FullPowerFlashes),
        choice.Limit is PlacementLimit.None ? MeasureFormat.ThreeDigits(choice.Spread.Value) : Reason(choice.Limit),
    ];

    private static string Flash(PlacementChoice choice)
    {
        var zoom = choice.Zoom is { } set ? $" at {PlanFormat.Millimetres(set)}" : "";
        return $"{(choice.Count == 2 ? "2 × " : "")}{choice.Flash}{zoom}{(choice.Modifier is null ? ", bare" : $" with {choice.Modifier}")}";
    }

    private static string Signed(UnitsNet.Length length) => FormattableString.Invariant($"{Math.Round(length.Millimeters) + 0.0:0} mm");

    private static IEnumerable<PlacementChoice> Thinned(IReadOnlyList<PlacementChoice> frontier) => frontier.Count <= MostFrontierRows
        ? frontier
        : Enumerable.Range(0, MostFrontierRows).Select(i => frontier[i * (frontier.Count - 1) / (MostFrontierRows - 1)]);

    private static string Reason(PlacementLimit limit) => limit switch
    {
        PlacementLimit.Veil => "too bright for the veil",
        PlacementLimit.FullPower => "too weak",
        PlacementLimit.PanelTooSmall => "panel too small",
        PlacementLimit.Geometry => "flash stands where it cannot",
        _ => "serves them all",
    };
}
