using StudioKit.Planning;
using StudioKit.Planning.Studio.Assembling;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>A pipe's end with its insertion mark, at full size.</summary>
internal static class PieceMarks
{
    private const double Shown = 55;

    public static Drawing Of(FramePlan frame, AssemblyStep.MarkPieces step, string says)
    {
        var thick = frame.PipeDiameter.Millimeters;
        List<Primitive> marks = [];
        foreach (var (depth, i) in step.Depths.Select(depth => depth.Depth).DistinctBy(CutFormat.CutLength).Select((depth, i) => (depth, i)))
        {
            var (top, at) = (i * (thick + 20), depth.Millimeters);
            marks.Add(Polygon.Rectangle(new Bounds(0, top, Math.Max(Shown, at + 15), top + thick), new Stroke(0.55), Fill.White));
            marks.Add(new Line(new Point(at, top), new Point(at, top + thick), new Stroke(0.9)));
            marks.Add(new Dimension(new Point(0, top), new Point(at, top), -6, CutFormat.CutLength(depth)));
            marks.Add(new Label(new Point(at + 3, top + (thick / 2)), "mark", 9, Rise: TextRise.Middle));
        }

        return new Drawing("Insertion mark", says, marks);
    }
}
