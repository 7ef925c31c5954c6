using Spectre.Console;
using StudioKit.Physics.Light;
using StudioKit.Planning;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>Light on the panel as tables and a small map on a terminal.</summary>
internal static class PanelLightTables
{
    private const int MapColumns = 9;
    private const int MapRows = 7;

    public static void Write(Plan plan, PanelLightPlan light, CommandHost host)
    {
        var console = TableConsole.For(host);
        WriteFlashes(console, light);
        if (light.Framings.Count > 0)
        {
            WriteFramings(console, light);
            TableConsole.Notes(console, Warnings(plan, light));
            WriteMap(console, light, light.Hardest!);
        }

        TableConsole.Notes(console, light.Caveats);
    }

    private static IEnumerable<string> Warnings(Plan plan, PanelLightPlan light) => plan.Exposures
        .Where(exposure => exposure.SetUp == light.SetUp)
        .SelectMany(exposure => WarningText.Of(exposure, plan.Advice).Select(text => $"{exposure.Framing.Name}: {text}"));

    private static void WriteFlashes(IAnsiConsole console, PanelLightPlan light)
    {
        var table = TableConsole.Table(
            $"{light.SetUp}: flash under the panel of {PlanFormat.Rectangle(light.PanelWidth, light.PanelDepth)}, {PlanFormat.Millimetres(light.PanelHeight)} over the ground, {(light.Skirts ? "with" : "without")} skirts",
            "flash", "under the panel", "over the ground", "from left edge", "from front edge", "tilt", "inverse square from", "short of it here");
        foreach (var flash in light.Flashes)
        {
            table.AddRow(
                Markup.Escape($"{(flash.Modifier is null ? flash.Flash : $"{flash.Flash} with {flash.Modifier}")}, {PlanFormat.Zoom(flash.Zoom)}"),
                PlanFormat.Millimetres(flash.Distance),
                PlanFormat.Millimetres(flash.OverGround),
                PlanFormat.Millimetres(flash.FromLeft),
                PlanFormat.Millimetres(flash.FromFront),
                MeasureFormat.Degrees(flash.Tilt),
                PlanFormat.Millimetres(flash.InverseSquareFrom),
                $"{Hundredths(flash.NearFieldShortfall.Value)} stop");
        }

        console.Write(table);
    }

    private static void WriteFramings(IAnsiConsole console, PanelLightPlan light)
    {
        var table = TableConsole.Table(
            $"Stops above clipping, {light.TargetMargin.Nominal} wanted at the darkest visible point",
            "framing", "power below", "darkest", "where", "brightest", "where", "clips", "veil", "glow from below");
        foreach (var framing in light.Framings)
        {
            table.AddRow(
                Markup.Escape(framing.Framing),
                framing.IsUsable ? framing.Mark.Nominal : $"{framing.Mark.Nominal} (does not work)",
                Hundredths(framing.Darkest.Margin.Value),
                PlanFormat.PanelPlace(light, framing.Darkest.Place),
                Hundredths(framing.Brightest.Margin.Value),
                PlanFormat.PanelPlace(light, framing.Brightest.Place),
                MeasureFormat.Percent(Math.Round(framing.ClippedFraction, 2)),
                framing.Veil is { } veil ? Hundredths(veil.Value) : "–",
                framing.UplightAgainstKey is { } glow ? Hundredths(glow.Value) : "–");
        }

        console.Write(table);
        console.WriteLine("Places count from the subject: right and back as the camera sees them. Glow from below: light on the subject's underside against the lights above, in stops.");
    }

    // Back row first, as the camera sees the panel.
    private static void WriteMap(IAnsiConsole console, PanelLightPlan light, FramingLightPlan framing)
    {
        var columns = Spread(framing.Grid.Columns, MapColumns);
        var table = TableConsole.Table(
            $"White margin over the panel at {framing.Mark.Nominal}, the power for {framing.Framing}; mm from left, rows in mm from the front",
            ["", .. columns.Select(column => Whole(framing.Grid.FromLeft(column, light.PanelWidth).Millimeters))]);
        foreach (var row in Spread(framing.Grid.Rows, MapRows).Reverse())
        {
            table.AddRow([Whole(framing.Grid.FromFront(row, light.PanelDepth).Millimeters), .. columns.Select(column => MarginText.InMap(light, PlaceOf(light, framing.Grid, column, row), framing.Grid.At(column, row)))]);
        }

        foreach (var column in table.Columns)
        {
            column.RightAligned();
        }

        console.Write(table);
        TableConsole.Notes(console, light.Covered.Count > 0 ? [$"pipe: {MarginText.DarkOverPipe}."] : []);
    }

    private static PanelPlace PlaceOf(PanelLightPlan light, MarginGrid grid, int column, int row) =>
        new(grid.FromLeft(column, light.PanelWidth) - (light.PanelWidth / 2), grid.FromFront(row, light.PanelDepth));

    private static int[] Spread(int count, int wanted) => [.. Enumerable.Range(0, wanted).Select(i => i * (count - 1) / (wanted - 1))];

    private static string Whole(double value) => FormattableString.Invariant($"{value:0}");

    private static string Hundredths(double value) => FormattableString.Invariant($"{value:+0.00;-0.00;0.00}");
}
