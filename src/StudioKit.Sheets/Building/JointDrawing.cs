using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Building.Solids;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building;

/// <summary>A fitting cut open with its pipes pushed in: take-off, the gap that a dry push leaves, and the insertion mark; its wall is drawn schematically.</summary>
internal static class JointDrawing
{
    private const double PipeShown = 10;
    private const double Row = 8;

    // Less is no gap that could be drawn or cut [mm].
    private const double LeastGap = 0.05;

    public static Drawing Of(FramePlan frame, FittingCount fitting)
    {
        var (bottom, end, mark, diameter) = (fitting.TakeOff.Millimeters, fitting.ToPipeEnd.Millimeters, fitting.ToMark.Millimeters, frame.PipeDiameter.Millimeters);
        var wall = FrameParts.WallShare * diameter;
        var outer = (diameter / 2) + wall;
        var ways = Ways(fitting.Kind);
        List<Primitive> marks = [.. ways.Select(way => Socket(way, mark, outer, fitting.Kind == FittingKind.Cap ? -wall : -outer))];
        marks.AddRange(ways.SelectMany(way => Pipe(way, bottom, end, mark, diameter / 2)));
        if (fitting.Kind == FittingKind.Corner)
        {
            marks.AddRange([new Circle(new Point(0, 0), outer, Stroke.Edge), new Circle(new Point(0, 0), diameter / 2, Stroke.Edge, Fill.White)]);
        }

        marks.AddRange([new Line(new Point(-3, 0), new Point(3, 0), Stroke.Centre), new Line(new Point(0, -3), new Point(0, 3), Stroke.Centre)]);
        marks.AddRange(Measured(frame, fitting, outer));
        return new Drawing(
            fitting.Name,
            $"A {fitting.Name} with its pipes: take-off {CutFormat.CutLength(fitting.TakeOff)} from its middle to the bottom of a socket, insertion mark {CutFormat.CutLength(frame.InsertionDepths[fitting.Kind])} from the pipe's end",
            marks);
    }

    // Each named once, in rows under the fitting; what lies further out comes first, so that no line runs through another's figures.
    private static IEnumerable<Dimension> Measured(FramePlan frame, FittingCount fitting, double outer)
    {
        var (bottom, end, mark) = (fitting.TakeOff.Millimeters, fitting.ToPipeEnd.Millimeters, fitting.ToMark.Millimeters);
        var row = 1;
        yield return Measure(end, mark, outer, Row * row++, $"pushed in {CutFormat.CutLength(frame.InsertionDepths[fitting.Kind])}, to the mark");
        if (end - bottom > LeastGap)
        {
            yield return Measure(bottom, end, outer, Row * row++, $"gap {CutFormat.CutLength(fitting.ToPipeEnd - fitting.TakeOff)}");
        }

        if (bottom > LeastGap)
        {
            yield return Measure(0, bottom, outer, Row * row, $"take-off {CutFormat.CutLength(fitting.TakeOff)}");
        }
    }

    private static Dimension Measure(double from, double to, double outer, double offset, string text) =>
        new(new Point(from, outer), new Point(to, outer), offset, text);

    // Quarter turns, clockwise from the right; the third way of a corner comes towards the reader and is drawn as its socket's circle.
    private static int[] Ways(FittingKind kind) => kind switch
    {
        FittingKind.Cap => [0],
        FittingKind.Coupling => [0, 2],
        FittingKind.Tee => [0, 2, 3],
        FittingKind.Cross => [0, 1, 2, 3],
        _ => [0, 3],
    };

    private static Polygon Socket(int way, double reach, double outer, double back) =>
        (Polygon)Polygon.Rectangle(new Bounds(back, -outer, reach, outer), Stroke.Edge, Fill.LightGrey).Under(new Similarity(1, way * Math.PI / 2, 0, 0));

    // The socket's hollow from its bottom, the pipe in it from its end.
    private static IEnumerable<Primitive> Pipe(int way, double bottom, double from, double mark, double half)
    {
        var turn = new Similarity(1, way * Math.PI / 2, 0, 0);
        yield return Polygon.Rectangle(new Bounds(bottom, -half, mark, half), Stroke.Thin, Fill.White).Under(turn);
        yield return Polygon.Rectangle(new Bounds(from, -half, mark + PipeShown, half), Stroke.Edge, Fill.White).Under(turn);
        yield return new Line(new Point(mark, -half), new Point(mark, half), Stroke.Heavy).Under(turn);
        yield return new Line(new Point(-2, 0), new Point(mark + PipeShown + 3, 0), Stroke.Centre).Under(turn);
    }
}
