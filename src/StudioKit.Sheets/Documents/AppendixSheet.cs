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
    private const int WordsAbreast = 3;

    private static readonly (string SourceKey, string SourceLocator)[] DaySources =
    [
        ("Meeus1998", "ch. 13 and 25, the sun's place"), ("Meeus1998", "ch. 16, refraction"), ("JaniczekDeYoung1987", "light of sun, sky and clouds"), ("AitDaylight", "spread of daylight"),
    ];

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
        ?
        [
            new Heading("Light budgets, in stops", 2),
            new InColumns(new Stack([.. plan.Exposures.GroupBy(exposure => exposure.SetUp).SelectMany(setUp => ExposureSection.Budgets([.. setUp]).Prepend(new Heading(setUp.Key, 3)))])),
        ]
        : [];

    private static IEnumerable<Block> Plots(Plan plan)
    {
        var plots = PlanPlots.Of(plan).Select(Block (plot) => new DrawingBlock(plot.Drawing, Caption: $"{plot.Drawing.Title}. {plot.Drawing.Description}")).ToList();
        return plots.Count == 0 ? [] : SideBySide.Rows(plots, PlotsAbreast).Prepend(new Heading("Plots", 2));
    }

    private static IEnumerable<Block> Defaults(IReadOnlyList<PlanDefault> defaults)
    {
        yield return new Heading("Defaults used", 2);
        yield return defaults.Count == 0
            ? new Paragraph("None: the kit says everything itself.")
            : new InColumns(new Stack([new ItemList([.. defaults.Select(taken => $"{taken.Path}: {taken.Value}")], ItemMarker.Dot, TypeScale.Smallest)]), DefaultsAbreast);
    }

    private static IEnumerable<Block> Sources(Plan plan)
    {
        var cited = plan.Checks.Select(check => (check.SourceKey, SourceLocator: CheckText.Locator(check)))
            .Concat(plan.Exposures.SelectMany(exposure => exposure.Lights).SelectMany(light => light.Budget.Lines).Select(line => (line.SourceKey, line.SourceLocator)))
            .Concat(plan.Cautions.SelectMany(caution => caution.Sources).Select(source => (SourceKey: source.Key, SourceLocator: source.Locator)))
            .Concat(plan.Exposures.Select(exposure => AmbientText.Published(exposure.Ambient)).OfType<SceneLight>().Select(scene => (scene.SourceKey, scene.SourceLocator)))
            .Where(source => Bibliography.Entries.ContainsKey(source.SourceKey))
            .Concat(plan.Day is null ? [] : DaySources)
            .Distinct().GroupBy(source => source.SourceKey, StringComparer.Ordinal).Select(Cited).Order(StringComparer.Ordinal).ToList();
        yield return new Heading("Sources", 2);
        yield return cited.Count == 0 ? new Paragraph("None cited.") : new InColumns(new Stack([new ItemList(cited, ItemMarker.Dot, TypeScale.Smallest)]));
    }

    // A source is named once, with every place in it.
    private static string Cited(IGrouping<string, (string SourceKey, string SourceLocator)> source) =>
        Bibliography.Cite(source.Key, string.Join("; ", source.Select(place => place.SourceLocator).Order(StringComparer.Ordinal)));

    private static IEnumerable<Block> Words()
    {
        yield return new Heading("Words", 2);
        yield return new InColumns(new Stack([.. Glossary.All.Select(entry => new Paragraph($"{entry.Term}: {entry.Meaning}", SmallPt))], 0.8), WordsAbreast);
    }
}
