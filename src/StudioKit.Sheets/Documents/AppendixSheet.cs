using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Plots;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>What is looked up and not read: light budgets, plots, defaults, sources and the words.</summary>
internal static class AppendixSheet
{
    private const double SmallPt = 7;
    private const int PlotsAbreast = 2;
    private const int DefaultsAbreast = 3;

    public static SheetDocument Make(Plan plan, Stamp stamp, PageSetup page) => new(
        "Appendix",
        stamp,
        page,
        [
            new Heading("Appendix"),
            .. Budgets(plan),
            .. Plots(plan),
            .. Defaults(plan.Defaults),
            .. Sources(plan),
            .. Words(),
        ]);

    private static IEnumerable<Block> Budgets(Plan plan) => plan.Exposures.Any(exposure => exposure.Lights.Count > 0)
        ? plan.Exposures.GroupBy(exposure => exposure.SetUp).SelectMany(setUp => ExposureSection.Budgets([.. setUp]).Prepend(new Heading(setUp.Key, 3))).Prepend(new Heading("Light budgets, in stops", 2))
        : [];

    private static IEnumerable<Block> Plots(Plan plan)
    {
        var plots = PlanPlots.Of(plan).Select(Block (plot) => new DrawingBlock(plot.Drawing, Caption: $"{plot.Drawing.Title}. {plot.Drawing.Description}")).ToList();
        return plots.Count == 0 ? [] : plots.Chunk(PlotsAbreast).Select(Block (pair) => new SideBySide([.. pair.Select(plot => (plot, 1.0)), .. Enumerable.Repeat(((Block)new Spacer(0), 1.0), PlotsAbreast - pair.Length)]))
            .Prepend(new Heading("Plots", 2));
    }

    private static IEnumerable<Block> Defaults(IReadOnlyList<PlanDefault> defaults)
    {
        yield return new Heading("Defaults used", 2);
        yield return defaults.Count == 0
            ? new Paragraph("None: the kit says everything itself.")
            : new Table(
                [.. Enumerable.Range(0, DefaultsAbreast).SelectMany(_ => new[] { new Column("Key in the kit"), new Column("Value taken") })],
                [.. Abreast(defaults)],
                TypeScale.Smallest);
    }

    // Read down the first column, then down the next.
    private static IEnumerable<TableRow> Abreast(IReadOnlyList<PlanDefault> defaults)
    {
        var rows = (defaults.Count + DefaultsAbreast - 1) / DefaultsAbreast;
        return Enumerable.Range(0, rows).Select(row => new TableRow(
            [.. Enumerable.Range(0, DefaultsAbreast).Select(column => (column * rows) + row).SelectMany(i => i < defaults.Count ? new[] { defaults[i].Path, defaults[i].Value } : ["", ""])]));
    }

    private static IEnumerable<Block> Sources(Plan plan)
    {
        var cited = plan.Checks.Select(check => (check.SourceKey, SourceLocator: CheckText.Locator(check)))
            .Concat(plan.Exposures.SelectMany(exposure => exposure.Lights).SelectMany(light => light.Budget.Lines).Select(line => (line.SourceKey, line.SourceLocator)))
            .Concat(plan.Cautions.SelectMany(caution => caution.Sources).Select(source => (SourceKey: source.Key, SourceLocator: source.Locator)))
            .Concat(plan.Exposures.Select(exposure => AmbientText.Published(exposure.Ambient)).OfType<SceneLight>().Select(scene => (scene.SourceKey, scene.SourceLocator)))
            .Where(source => Bibliography.Entries.ContainsKey(source.SourceKey))
            .Select(source => Bibliography.Cite(source.SourceKey, source.SourceLocator))
            .Distinct().Order(StringComparer.Ordinal).ToList();
        yield return new Heading("Sources", 2);
        yield return cited.Count == 0 ? new Paragraph("None cited.") : new InColumns(new Stack([new ItemList(cited, ItemMarker.Dot, TypeScale.Smallest)]));
    }

    private static IEnumerable<Block> Words()
    {
        yield return new Heading("Words", 2);
        yield return new InColumns(new Stack([.. Glossary.All.Select(entry => new Paragraph($"{entry.Term}: {entry.Meaning}", SmallPt))], 0.8));
    }
}
