using System.Globalization;
using Spectre.Console;
using StudioKit.Physics;
using StudioKit.Planning;
using StudioKit.Planning.Stations;
using StudioKit.Planning.Studio.Hardware;

namespace StudioKit.Cli.Tables;

/// <summary>What several studios share, as tables on a terminal.</summary>
internal static class StationsTables
{
    public static void Write(StationsPlan plan, CommandHost host)
    {
        var console = TableConsole.For(host);
        console.WriteLine($"{plan.Stations.Count.ToString(CultureInfo.InvariantCulture)} stations: {string.Join(", ", plan.Stations)}.");
        var cuts = TableConsole.Table("Bought and cut together", "what", "stations", "each for itself", "together", "proven");
        foreach (var cut in plan.Cuts)
        {
            cuts.AddRow(Markup.Escape(cut.Material), Who(cut.Stations, plan), Taken(cut.Apart, plan), Taken(cut.Together, plan), cut.IsProven ? "yes" : "no");
        }

        var alike = TableConsole.Table("Alike, so that a spare fits them all", "what", "size", "stations", "in each at least");
        foreach (var piece in plan.Alike)
        {
            alike.AddRow(
                Markup.Escape(piece.Material), piece.Width is { } width ? PlanFormat.Rectangle(piece.Length, width) : CutFormat.CutLength(piece.Length), Who(piece.Stations, plan),
                piece.Fewest.ToString(CultureInfo.InvariantCulture));
        }

        foreach (var table in new[] { (Table: cuts, plan.Cuts.Count), (Table: alike, plan.Alike.Count) }.Where(table => table.Count > 0))
        {
            console.Write(table.Table);
        }

        TableConsole.Notes(console, Notes(plan));
    }

    private static IEnumerable<string> Notes(StationsPlan plan)
    {
        if (plan.Saved is { } saved && plan.Cuts.Count > 0)
        {
            yield return saved > 0 ? string.Create(CultureInfo.InvariantCulture, $"Bought together it costs {saved:0.00} {plan.Currency} less.") : "Bought together it costs the same.";
        }

        if (plan.Tools.Count > 0)
        {
            yield return $"One of each does for all who take turns: {string.Join(", ", plan.Tools.Select(tool => ToolText.Name(tool.Tool)))}.";
        }

        foreach (var clash in plan.Channels)
        {
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"Radio channel {clash.Channel} is used by {string.Join(" and ", clash.Stations)}: who fires one fires the other. Free for the others: {string.Join(", ", clash.Free)}.");
        }
    }

    private static string Who(ValueList<string> stations, StationsPlan plan) => stations.Count == plan.Stations.Count ? "all" : Markup.Escape(string.Join(", ", stations));

    private static string Taken(StockTaken taken, StationsPlan plan) => taken.Cost is { } cost
        ? string.Create(CultureInfo.InvariantCulture, $"{taken.Count}, {cost:0.00} {plan.Currency}")
        : string.Create(CultureInfo.InvariantCulture, $"{taken.Count}, not all can be cut");
}
