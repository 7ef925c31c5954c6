using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Templates at full size.</summary>
internal static class TemplatesSection
{
    public static IEnumerable<Block> Of(Plan plan, FramePlan frame, PageSetup page)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        yield return new Heading($"Templates at full size: {plan.Kit.Name}");
        foreach (var row in TemplateRows.Of([Building.Templates.CheckSquare, .. BuildDrawings.SmallTemplates(plan, frame).Select(template => template.Drawing)], page.Body.Width))
        {
            yield return row;
        }

        foreach (var block in Large(frame, page))
        {
            yield return block;
        }
    }

    private static IEnumerable<Block> Large(FramePlan frame, PageSetup page)
    {
        if (Building.Templates.SweepCurve(frame) is { } sweep)
        {
            foreach (var block in WithHelp(TemplateTiles.Of(sweep, page.Body)))
            {
                yield return block;
            }

            yield return new Paragraph("Bend acrylic cold only, over the full width, slowly, with goggles on: a sheet that is forced below its least radius shatters.");
        }

        foreach (var box in frame.Softboxes)
        {
            var (which, tiles) = TemplateTiles.OfFewest([SoftboxPattern.Of(box), SoftboxPattern.Half(box, upright: true), SoftboxPattern.Half(box, upright: false)], page.Body);
            foreach (var block in WithHelp(tiles))
            {
                yield return block;
            }

            if (which > 0)
            {
                yield return new Paragraph(OnTheFold(box, upright: which == 1));
            }
        }
    }

    private static IEnumerable<Block> WithHelp(IReadOnlyList<Block> tiles) =>
        tiles.Count < 2 ? tiles : tiles.Append(new Paragraph("Lay neighbouring parts on each other so that their ringed crosses meet, and tape them."));

    private static string OnTheFold(FoldedSoftbox box, bool upright) =>
        $"Of the pattern for {box.Flash} half is printed, as both halves are alike. Draw the fold line on the sheet, {CutFormat.CutLength(SoftboxPattern.Fold(box, upright))} from end to end, and measure that of the paper against it. Lay the paper on it, trace, turn the paper over along the fold line, lay it on again end on end, and trace the other half. Fold away from you along dashed lines, flaps to the inside; the crossed opening is for a head of {PlanFormat.Rectangle(box.HeadWidth, box.HeadHeight)}.";
}
