using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Plots;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The plan as a report: what was worked out, from what, how sure it is and where it comes from.</summary>
internal static class PlanReport
{
    private const double DefaultsPt = 7;

    public static SheetDocument Make(Plan plan, Stamp stamp, PageSetup page) => new(
        "Plan report",
        stamp,
        page,
        [
            new Heading(plan.Kit.Name),
            .. plan.Kit.Description.Length == 0 ? (Block[])[] : [new Paragraph(plan.Kit.Description)],
            new Paragraph(Verdict(plan), Weight: TextWeight.Bold),
            .. Panel(plan.Panel),
            .. Framings(plan.Framings),
            .. plan.SheetLights.SelectMany(light => LightSection.Of(plan, light)),
            .. MeasuredBeams.Of(plan),
            .. Exposures(plan),
            .. Plots(plan),
            .. Checks(plan),
            .. plan.Corrections is null ? (Block[])[] : [.. CorrectionSection.Of(plan.Corrections)],
            .. Defaults(plan.Defaults),
            .. Sources(plan),
        ]);

    /// <summary>Whether the plan stands, in a sentence.</summary>
    public static string Verdict(Plan plan)
    {
        var failed = plan.Checks.Where(check => !check.Passed).Select(CheckText.Name).ToList();
        return failed.Count == 0 ? "The plan passes all its checks." : $"The plan fails {failed.Count} of its checks: {string.Join(", ", failed)}.";
    }

    private static IEnumerable<Block> Panel(PanelPlan panel)
    {
        yield return new Heading("Panel", 2);
        var size = panel.SizeGiven ? "given by the kit" : "worked out from the framings";
        var largest = panel.LargestFraming is null ? "" : $" {panel.LargestFraming} asks for most{(panel.LargestPitch is { } pitch ? $", at a camera pitch of {PlanFormat.Degrees(pitch)}" : "")}.";
        yield return new Paragraph(
            $"{PlanFormat.Rectangle(panel.Width, panel.Depth)} of {PlanFormat.Millimetres(panel.Thickness)} {panel.Material}, {size}; "
            + $"the framings need {PlanFormat.Rectangle(panel.RequiredWidth, panel.RequiredDepth)}.{largest} It weighs {PlanFormat.Mass(panel.Mass)}.");
        yield return new DrawingBlock(PanelDrawing.Of(panel), MaxHeight: 75);
        foreach (var block in Caveats(panel.Caveats))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Framings(IReadOnlyList<FramingPlan> framings)
    {
        yield return new Heading("Framings", 2);
        yield return new Table(
            [
                new Column("Framing"), new Column("With"), new Column($"Field, {PlanFormat.FigureUnit}"), new Column($"Glass to subject, {PlanFormat.FigureUnit}", ColumnKind.Decimal), new Column($"±, {PlanFormat.FigureUnit}", ColumnKind.Decimal),
                new Column("Extension, mm", ColumnKind.Decimal), new Column("Effective × marked f-number", ColumnKind.Decimal),
            ],
            [.. framings.Select(framing => new TableRow(framing.Reached
                ?
                [
                    framing.Name, framing.Accessories.Count == 0 ? "lens alone" : string.Join(", ", framing.Accessories),
                    PlanFormat.Sides(framing.FieldWidth, framing.FieldHeight),
                    PlanFormat.Figure(framing.WorkingDistance), PlanFormat.Figure(framing.WorkingDistanceUncertainty),
                    PlanFormat.ThreeDigits(framing.Extension.Millimeters),
                    PlanFormat.ThreeDigits(framing.EffectiveApertureFactor),
                ]
                : [framing.Name, ReachText.Of(framing.Limit!), "", "", "", "", ""]))]);
        foreach (var block in Caveats(framings.SelectMany(framing => framing.Caveats).Concat(LensAssumptionText.Of(framings))))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Exposures(Plan plan)
    {
        yield return new Heading("Starting exposures", 2);
        yield return new Caution(UsualCautions.Flash);
        foreach (var block in plan.Exposures.GroupBy(exposure => exposure.SetUp).SelectMany(setUp => ExposureSection.Of(
            [.. setUp], [.. plan.Features.Where(feature => feature.SetUp == setUp.Key)], plan.Covers.FirstOrDefault(cover => cover.SetUp == setUp.Key),
            [.. plan.LightStands.Where(stand => stand.SetUp == setUp.Key)])))
        {
            yield return block;
        }

        foreach (var block in Caveats(plan.Exposures.SelectMany(exposure => exposure.Caveats)))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Plots(Plan plan)
    {
        var plots = PlanPlots.Of(plan);
        return plots.Count == 0 ? [] : plots
            .Select(Block (plot) => new DrawingBlock(plot.Drawing, Caption: $"{plot.Drawing.Title}. {plot.Drawing.Description}"))
            .Prepend(new Heading("Plots", 2));
    }

    private static IEnumerable<Block> Checks(Plan plan)
    {
        yield return new Heading("Checks", 2);
        yield return new Table(
            [
                new Column("Check"), new Column("Taken for given"), new Column("Result"), new Column("Demand"), new Column("Capacity"), new Column("Ratio", ColumnKind.Decimal), new Column("What would fix it"),
            ],
            [.. plan.Checks.Select(check => new TableRow(
                [
                    CheckText.Name(check), LoadText.Of(check.Loads), check.Passed ? "passes" : "FAILS", CheckText.Demand(check), CheckText.Capacity(check),
                    check.Ratio is { } ratio ? FormattableString.Invariant($"{ratio:0.00}") : "", $"{CheckText.Remedy(check)} {CheckText.Keys(check, plan)}".Trim(),
                ]))],
            TypeScale.Small);
        if (Wind(plan) is { } wind)
        {
            yield return new Paragraph($"Wind: {LoadText.Of(wind)}. Heavier elbows, boxes, sun or wind than these go into the kit, and the plan is made again.");
        }

        foreach (var block in Caveats(plan.Checks.Select(CheckText.Note).Where(note => note.Length > 0)))
        {
            yield return block;
        }
    }

    private static SiteWind? Wind(Plan plan) => plan.Frame?.Wind ?? (plan.Workshop is { Uprights: [var first, ..] } ? first.Wind : null);

    private static IEnumerable<Block> Defaults(IReadOnlyList<PlanDefault> defaults)
    {
        yield return new Heading("Defaults used", 2);
        yield return defaults.Count == 0
            ? new Paragraph("None: the kit says everything itself.")
            : new Table(
                [new Column("Key in the kit"), new Column("Value taken"), new Column("Key in the kit"), new Column("Value taken")],
                [.. TwoAbreast(defaults)],
                DefaultsPt);
    }

    // Read down the left half, then down the right.
    private static IEnumerable<TableRow> TwoAbreast(IReadOnlyList<PlanDefault> defaults)
    {
        var half = (defaults.Count + 1) / 2;
        for (var i = 0; i < half; i++)
        {
            var right = half + i < defaults.Count ? defaults[half + i] : null;
            yield return new TableRow([defaults[i].Path, defaults[i].Value, right?.Path ?? "", right?.Value ?? ""]);
        }
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
        yield return cited.Count == 0 ? new Paragraph("None cited.") : new ItemList(cited, ItemMarker.Dot, TypeScale.Small);
        yield return new Caution(UsualCautions.Animals);
    }

    private static IEnumerable<Block> Caveats(IEnumerable<string> caveats)
    {
        var distinct = caveats.Distinct().ToList();
        if (distinct.Count > 0)
        {
            yield return new ItemList(distinct, ItemMarker.Dot, TypeScale.Small);
        }
    }
}
