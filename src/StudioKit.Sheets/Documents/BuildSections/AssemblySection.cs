using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Sheets.Building.Steps;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Putting the frame up and packing it down, a drawing for every step.</summary>
internal static class AssemblySection
{
    private const double CautionPt = 9;
    private const double PackingTall = 40;
    private const double PackingPt = 8.5;
    private const int PackingAbreast = 4;

    public static IEnumerable<Block> Of(Plan plan, FramePlan frame)
    {
        if (frame.Assembly.Count == 0)
        {
            return CautionBlocks.Of(plan, CautionSheet.Build);
        }

        return Steps(plan, frame);
    }

    // What can hurt comes before the acts.
    private static IEnumerable<Block> Steps(Plan plan, FramePlan frame)
    {
        yield return new Heading("Putting it up", 2);
        yield return new CautionList([.. CautionBlocks.Listed(plan, CautionSheet.Build), ("Wind", Wind(plan, frame)), ("Flash", UsualCautions.Flash)], CautionPt);
        yield return new Paragraph("Grey and thin is what stands already, heavy and white what the step brings. Front is the side of the camera, left and right are as the camera sees them. Arrows show along which way a part is pushed.");
        foreach (var row in SideBySide.Rows(Drawn(plan, frame).Select(drawn => StepBlock.Of(drawn.Number, AssemblyText.Title(drawn.Step), AssemblyText.Of(drawn.Step, frame.Geometry), drawn.Drawing))))
        {
            yield return row;
        }

        yield return new Heading("Packing down: what is heavy comes off, the way the arrows point", 2);
        foreach (var row in SideBySide.Rows(Packed(plan, frame), PackingAbreast))
        {
            yield return row;
        }
    }

    private static string Wind(Plan plan, FramePlan frame)
    {
        var checkedFor = frame.Wind is { } wind ? LoadText.Of(wind) : "no wind";
        var place = plan.Kit.Site.Name.Length > 0 ? $" at {plan.Kit.Site.Name}" : "";
        return $"This studio was checked for {checkedFor}{place}. Take it down when the wind rises above that or a storm is near; never stand under a swept sheet in wind. {UsualCautions.LocalRules}";
    }

    /// <summary>Every step's drawing with its number.</summary>
    public static IEnumerable<(AssemblyStep Step, Drawings.Drawing Drawing, int Number)> Drawn(Plan plan, FramePlan frame)
    {
        var pictures = new StepPictures(plan, frame);
        return frame.Assembly.Select((step, i) => (step, pictures.Of(step), i + 1));
    }

    private static IEnumerable<Block> Packed(Plan plan, FramePlan frame)
    {
        var pictures = new StepPictures(plan, frame);
        return frame.PackingDown.Select((step, i) => new Stack(
        [
            .. pictures.Of(step) is { } drawing ? (Block[])[new DrawingBlock(drawing, MaxHeight: PackingTall, Caption: "")] : [],
            new Paragraph(FormattableString.Invariant($"{i + 1}  {AssemblyText.Of(step)}"), PackingPt),
        ]));
    }
}
