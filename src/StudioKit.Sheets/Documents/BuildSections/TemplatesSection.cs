using StudioKit.Planning;
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
        yield return new DrawingBlock(Building.Templates.CheckSquare, TrueScale: true, MaxHeight: 120);
        foreach (var template in BuildDrawings.SmallTemplates(plan, frame))
        {
            yield return new DrawingBlock(template.Drawing, TrueScale: true, MaxHeight: 240);
        }

        foreach (var tile in BuildDrawings.LargeTemplates(plan, frame).SelectMany(template => TemplateTiles.Of(template.Drawing, page.Body)))
        {
            yield return tile;
        }

        yield return new Paragraph("Of templates in several parts lay neighbouring parts on each other so that their ringed crosses meet, and tape them. Bend acrylic cold only, over the full width, slowly, with goggles on: a sheet that is forced below its least radius shatters.");
    }
}
