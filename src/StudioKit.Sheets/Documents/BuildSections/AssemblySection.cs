using StudioKit.Planning;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Sheets.Building.Steps;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>Putting the frame up and packing it down, a drawing for every step.</summary>
internal static class AssemblySection
{
    public static IEnumerable<Block> Of(Plan plan, FramePlan frame)
    {
        if (frame.Assembly.Count == 0)
        {
            yield break;
        }

        yield return new PageBreak();
        yield return new Heading("Putting it up", 2);
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

        yield return new Heading("Packing down", 2);
        yield return new ItemList([.. frame.PackingDown.Select(AssemblyText.Of)], ItemMarker.Number);
    }

    /// <summary>Every step's drawing with its number.</summary>
    public static IEnumerable<(AssemblyStep Step, Drawings.Drawing Drawing, int Number)> Drawn(Plan plan, FramePlan frame)
    {
        var pictures = new StepPictures(plan, frame);
        return frame.Assembly.Select((step, i) => (step, pictures.Of(step), i + 1));
    }

    private static int FirstFlash(FramePlan frame) => 1 + frame.Assembly.TakeWhile(step => step is not AssemblyStep.PutFlash).Count();
}
