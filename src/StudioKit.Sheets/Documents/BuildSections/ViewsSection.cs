using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>The frame from three sides, and every part in its place.</summary>
internal static class ViewsSection
{
    public static IEnumerable<Block> Of(Plan plan, FramePlan frame, Measures measures)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        yield return new Heading("Views", 2);
        yield return new Paragraph("Seen from above, grey strips on the rails are what the panel rests on, and dots are its clips.");
        foreach (var view in BuildDrawings.Views(plan, frame, measures))
        {
            yield return new DrawingBlock(view.Drawing, MaxHeight: 200, Caption: view.Drawing.Title);
        }

        yield return new Heading("Every part in its place", 2);
        yield return new Paragraph("Grey fittings are pinned. A letter stands for one length of pipe; J marks fittings.");
        yield return new DrawingBlock(ExplodedDrawing.Of(frame), MaxHeight: 240, Caption: "Exploded view, not to scale; labels are those of the lists");
    }
}
