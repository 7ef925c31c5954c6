using Spectre.Console;
using StudioKit.Planning;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>Two plans side by side on a terminal.</summary>
internal static class ComparisonTables
{
    public static void Write(PlanComparison comparison, CommandHost host)
    {
        var console = TableConsole.For(host);
        var table = TableConsole.Table("Two kits", "", "", comparison.First.Kit.Name, comparison.Second.Kit.Name);
        foreach (var line in ComparisonText.Lines(comparison))
        {
            table.AddRow(line.Differs ? "≠" : "", Markup.Escape(line.Subject), Markup.Escape(line.First), Markup.Escape(line.Second));
        }

        console.Write(table);
        var difference = comparison.MassDifference;
        console.WriteLine(difference.Grams == 0
            ? "Both weigh the same."
            : $"{comparison.Second.Kit.Name} is {MeasureFormat.Mass(difference.Grams > 0 ? difference : -difference)} {(difference.Grams > 0 ? "heavier" : "lighter")}.");
    }
}
