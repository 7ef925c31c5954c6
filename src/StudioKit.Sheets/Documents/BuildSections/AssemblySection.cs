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
    private const double PackingTall = 40;
    private const double PackingPt = 9;
    private const int PackingAbreast = 3;

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
        foreach (var caution in CautionBlocks.Of(plan, CautionSheet.Build))
        {
            yield return caution;
        }

        yield return new Caution(
            $"This studio was checked for {(frame.Wind is { } wind ? LoadText.Of(wind) : "no wind")}{(plan.Kit.Site.Name.Length > 0 ? $" at {plan.Kit.Site.Name}" : "")}. Take it down when the wind rises above that or a storm is near; never stand under a swept sheet in wind. {UsualCautions.LocalRules}",
            "Wind");
        yield return new Paragraph("Grey and thin is what stands already, heavy and white what the step brings. Front is the side of the camera, left and right are as the camera sees them. Arrows show along which way a part is pushed.");
        foreach (var (step, drawing, number) in Drawn(plan, frame))
        {
            var block = StepBlock.Of(number, AssemblyText.Title(step), AssemblyText.Of(step, frame.Geometry), drawing);
            yield return step is AssemblyStep.PutFlash && number == FirstFlash(frame)
                ? new KeepTogether(new Stack([new Caution(UsualCautions.Flash, "Flash"), block]))
                : block;
        }

        yield return new Heading("Packing down: what is heavy comes off, the way the arrows point", 2);
        foreach (var row in Packed(plan, frame).Chunk(PackingAbreast))
        {
            yield return new SideBySide([.. row.Select(block => (block, 1.0)), .. Enumerable.Repeat(((Block)new Spacer(0), 1.0), PackingAbreast - row.Length)]);
        }
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

    private static int FirstFlash(FramePlan frame) => 1 + frame.Assembly.TakeWhile(step => step is not AssemblyStep.PutFlash).Count();
}
