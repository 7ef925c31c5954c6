using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The plan as a report: what was worked out, from what, how sure it is and where it comes from.</summary>
internal static class PlanReport
{
    private const double CaveatsPt = 7;
    private const double CautionPt = 9;
    private const double PanelTall = 50;

    public static SheetDocument Make(Plan plan, Stamp stamp, PageSetup page) => new(
        "Plan report",
        stamp,
        page,
        [
            new Heading(plan.Kit.Name),
            .. plan.Kit.Description.Length == 0 ? (Block[])[] : [new Paragraph(plan.Kit.Description)],
            new Paragraph(Verdict(plan), Weight: TextWeight.Bold),
            new CautionList([("Flashes", UsualCautions.Flash), ("Animals", UsualCautions.Animals)], CautionPt),
            .. Panel(plan.Panel),
            .. Framings(plan.Framings),
            .. MeasuredBeams.Of(plan),
            .. Exposures(plan),
            .. Checks(plan),
            .. plan.Corrections is null ? (Block[])[] : [.. CorrectionSection.Of(plan.Corrections)],
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
        var largest = panel.LargestFraming is null ? "" : $" {panel.LargestFraming} asks for most{(panel.LargestPitch is { } pitch ? $", at a camera pitch of {MeasureFormat.Degrees(pitch)}" : "")}.";
        var words = new Paragraph(
            $"{PlanFormat.Rectangle(panel.Width, panel.Depth)} of {PlanFormat.Millimetres(panel.Thickness)} {panel.Material}, {size}; "
            + $"the framings need {PlanFormat.Rectangle(panel.RequiredWidth, panel.RequiredDepth)}.{largest} It weighs {MeasureFormat.Mass(panel.Mass)}.");
        yield return new SideBySide([(words, 1), (new DrawingBlock(PanelDrawing.Of(panel), MaxHeight: PanelTall), 1)]);
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
                new Column("Framing"), new Column("With"), new Column($"Field, {FigureFormat.FigureUnit}"), new Column($"Glass to subject, {FigureFormat.FigureUnit}", ColumnKind.Decimal), new Column($"±, {FigureFormat.FigureUnit}", ColumnKind.Decimal),
                new Column("Extension, mm", ColumnKind.Decimal), new Column("Effective × marked f-number", ColumnKind.Decimal),
            ],
            [.. framings.Select(framing => new TableRow(framing.Reached
                ?
                [
                    framing.Name, framing.Accessories.Count == 0 ? "lens alone" : string.Join(", ", framing.Accessories),
                    FigureFormat.Sides(framing.FieldWidth, framing.FieldHeight),
                    FigureFormat.Figure(framing.WorkingDistance), FigureFormat.Figure(framing.WorkingDistanceUncertainty),
                    MeasureFormat.ThreeDigits(framing.Extension.Millimeters),
                    MeasureFormat.ThreeDigits(framing.EffectiveApertureFactor),
                ]
                : [framing.Name, ReachText.Of(framing.Limit!), "", "", "", "", ""]))],
            TypeScale.Small);
        foreach (var block in Caveats(framings.SelectMany(framing => framing.Caveats).Concat(LensAssumptionText.Of(framings))))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Exposures(Plan plan)
    {
        yield return new Heading("Starting exposures", 2);
        foreach (var block in plan.Exposures.GroupBy(exposure => exposure.SetUp).SelectMany(setUp => ExposureSection.Of(
            [.. setUp], [.. plan.Features.Where(feature => feature.SetUp == setUp.Key)], plan.Covers.FirstOrDefault(cover => cover.SetUp == setUp.Key),
            [.. plan.LightStands.Where(stand => stand.SetUp == setUp.Key)])))
        {
            yield return block;
        }

        foreach (var block in FeatureTable.Basis(plan.Features).Concat(MeteredTable.Basis(plan.Exposures)).Concat(Caveats(plan.Exposures.SelectMany(exposure => exposure.Caveats))))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Checks(Plan plan)
    {
        yield return new Heading("Checks", 2);
        var given = plan.Checks.Select(check => LoadText.Of(check.Loads)).Where(loads => loads.Length > 0).Distinct().ToList();
        yield return new Table(
            [
                new Column("Check"), new Column("Result"), new Column("Demand"), new Column("Capacity"), new Column("Ratio", ColumnKind.Decimal), new Column("Given", ColumnKind.Right),
            ],
            [.. plan.Checks.Select(check => new TableRow(
                [
                    CheckText.Name(check), check.Passed ? "passes" : "FAILS", CheckText.Demand(check), CheckText.Capacity(check),
                    check.Ratio is { } ratio ? FormattableString.Invariant($"{ratio:0.00}") : "", Number(given.IndexOf(LoadText.Of(check.Loads))),
                ]))],
            TypeScale.Tables);
        if (given.Count > 0)
        {
            yield return new Paragraph($"Taken for given: {string.Join("; ", given.Select((loads, i) => $"{Number(i)} {loads}"))}.", TypeScale.Small);
        }

        if (Wind(plan) is { } wind)
        {
            yield return new Paragraph($"Wind: {LoadText.Of(wind)}. Heavier elbows, boxes, sun or wind than these go into the kit, and the plan is made again.", TypeScale.Small);
        }

        foreach (var block in Caveats(plan.Checks.Select(CheckText.Note).Where(note => note.Length > 0)))
        {
            yield return block;
        }
    }

    private static string Number(int place) => place < 0 ? "" : FormattableString.Invariant($"{place + 1})");

    private static SiteWind? Wind(Plan plan) => plan.Frame?.Wind ?? (plan.Workshop is { Uprights: [var first, ..] } ? first.Wind : null);

    private static IEnumerable<Block> Caveats(IEnumerable<string> caveats)
    {
        var distinct = caveats.Distinct().ToList();
        if (distinct.Count > 0)
        {
            var list = new ItemList(distinct, ItemMarker.Dot, CaveatsPt);
            yield return distinct.Count == 1 ? list : new InColumns(new Stack([list]));
        }
    }
}
