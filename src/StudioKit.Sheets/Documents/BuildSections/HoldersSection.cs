using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>The holders of lights that are built of the frame's pipe: each whole with its measures, then step by step.</summary>
internal static class HoldersSection
{
    private const double StepTall = 42;

    public static IEnumerable<Block> Of(FramePlan frame)
    {
        if (frame.BuiltHolders.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Holders of the lights", 2);
        foreach (var holder in frame.BuiltHolders)
        {
            yield return new DrawingBlock(HolderDrawing.Of(holder, frame.PipeDiameter), MaxHeight: 110, Caption: $"Holder: {holder.Holder}, cut from the frame's pipe; hatched: its flash");
            foreach (var row in SideBySide.Rows(holder.Assembly.Select((step, i) => Step(frame, holder, step, i + 1))))
            {
                yield return row;
            }
        }
    }

    private static Block Step(FramePlan frame, BuiltHolder holder, HolderStep step, int number) =>
        StepBlock.Of(number, HolderText.Title(step, holder), HolderText.Of(step, holder), StepBlock.Fitted(HolderDrawing.Step(holder, frame.PipeDiameter, step), StepTall));
}
