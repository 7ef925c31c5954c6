using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>The holders of lights that are built of the frame's pipe.</summary>
internal static class HoldersSection
{
    public static IEnumerable<Block> Of(FramePlan frame, Measures measures)
    {
        if (frame.BuiltHolders.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Holders of the lights", 2);
        foreach (var holder in frame.BuiltHolders)
        {
            yield return new KeepTogether(new Stack(
                [
                    new DrawingBlock(HolderDrawing.Of(holder, frame.PipeDiameter, measures), MaxHeight: 110, Caption: $"Holder: {holder.Holder}, cut from the frame's pipe; hatched: its flash"),
                    new ItemList(HolderText.Steps(holder), ItemMarker.Number),
                ],
                1));
        }
    }
}
