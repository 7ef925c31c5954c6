using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building;

/// <summary>A fitting with its pipes pushed in, with take-off and insertion mark; its wall is drawn schematically.</summary>
internal static class JointDrawing
{
    private const double PipeShown = 35;
    private const double WallShare = 0.14;
    private const double LeastDrawn = 0.5;

    public static Drawing Of(FramePlan frame, FittingCount fitting, Measures measures)
    {
        var (end, mark, diameter) = (fitting.ToPipeEnd.Millimeters, fitting.ToMark.Millimeters, frame.PipeDiameter.Millimeters);
        var depth = frame.InsertionDepths[fitting.Kind].Millimeters;
        var outer = (diameter / 2) + (WallShare * diameter);
        var ways = Ways(fitting.Kind);
        List<Primitive> marks = [.. ways.Select(way => Socket(way, mark, outer))];
        marks.AddRange(ways.SelectMany(way => Pipe(way, end, mark, diameter / 2)));
        if (fitting.Kind == FittingKind.Corner)
        {
            marks.AddRange([new Circle(new Point(0, 0), outer, Stroke.Edge), new Circle(new Point(0, 0), diameter / 2, Stroke.Edge, Fill.White)]);
        }

        marks.AddRange([new Line(new Point(-3, 0), new Point(3, 0), Stroke.Centre), new Line(new Point(0, -3), new Point(0, 3), Stroke.Centre)]);
        if (end > LeastDrawn)
        {
            marks.Add(new Dimension(new Point(0, outer), new Point(end, outer), 13, measures.Of(end)));
        }

        marks.Add(new Dimension(new Point(end, outer), new Point(mark, outer), 6, $"{measures.Of(depth)} to the mark"));
        return new Drawing(
            $"{fitting.Name}",
            $"A {fitting.Name} with its pipes: their ends lie {Measures.Metric(end)} from its middle, the insertion mark {Measures.Metric(depth)} from the end",
            marks);
    }

    // Quarter turns, clockwise from the right; the third way of a corner comes towards the reader and is drawn as its socket's circle.
    private static int[] Ways(FittingKind kind) => kind switch
    {
        FittingKind.Cap => [0],
        FittingKind.Coupling => [0, 2],
        FittingKind.Tee => [0, 2, 3],
        FittingKind.Cross => [0, 1, 2, 3],
        _ => [0, 3],
    };

    private static Polygon Socket(int way, double reach, double outer) =>
        (Polygon)Polygon.Rectangle(new Bounds(-outer, -outer, reach, outer), Stroke.Edge, Fill.LightGrey).Under(new Similarity(1, way * Math.PI / 2, 0, 0));

    private static IEnumerable<Primitive> Pipe(int way, double from, double mark, double half)
    {
        var turn = new Similarity(1, way * Math.PI / 2, 0, 0);
        yield return Polygon.Rectangle(new Bounds(from, -half, mark + PipeShown, half), Stroke.Edge, Fill.White).Under(turn);
        yield return new Line(new Point(mark, -half), new Point(mark, half), Stroke.Heavy).Under(turn);
        yield return new Line(new Point(-2, 0), new Point(mark + PipeShown + 3, 0), Stroke.Centre).Under(turn);
    }
}
