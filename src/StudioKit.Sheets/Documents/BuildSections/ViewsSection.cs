using StudioKit.Planning;
using StudioKit.Sheets.Building;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Documents.BuildSections;

/// <summary>The frame from three sides, and every part in its place.</summary>
internal static class ViewsSection
{
    public static IEnumerable<Block> Of(Plan plan, FramePlan frame)
    {
        if (frame.Geometry.Members.Count == 0)
        {
            yield break;
        }

        // A heading and its sentence stand over the drawing that they speak of.
        var views = BuildDrawings.Views(plan, frame).Select(view => new DrawingBlock(view.Drawing, MaxHeight: 200, Caption: view.Drawing.Title)).ToList();
        yield return new Heading("Views", 2);
        yield return new KeepTogether(new Stack([new Paragraph("Seen from above, grey strips on the rails are what the panel rests on, and dots are its clips."), views[0]]));
        foreach (var view in views.Skip(1))
        {
            yield return view;
        }

        yield return new Heading("Every part in its place", 2);
        yield return new KeepTogether(new Stack(
            [
                new Paragraph("Grey fittings are pinned. A letter stands for one length of pipe; J marks fittings."),
                new DrawingBlock(ExplodedDrawing.Of(frame), MaxHeight: 225, Caption: "Exploded view, not to scale; labels are those of the lists"),
            ]));
    }
}
