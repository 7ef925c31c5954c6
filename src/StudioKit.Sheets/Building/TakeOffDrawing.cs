using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Planning.Studio;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Building;

/// <summary>What take-off is on a fitting, and two ways to measure it; the fitting's wall is drawn as a share of the pipe.</summary>
internal static class TakeOffDrawing
{
    private const double WallShare = 0.14;
    private const double PipeShown = 24;
    private const double LabelPt = 8;
    private const double Step = 7;
    private const double Beside = 10;

    /// <summary>What it is, and beside it how it is measured with a rule.</summary>
    public static Drawing Of(FramePlan frame, FittingCount fitting)
    {
        var (meaning, measured) = (Meaning(frame, fitting), ByDepth(frame, fitting));
        return meaning with { Marks = [.. meaning.Marks, .. measured.Shifted(meaning.Bounds.Right - measured.Bounds.Left + Beside, 0).Marks] };
    }

    // A fitting with one pipe pushed in: take-off, gap and mark.
    private static Drawing Meaning(FramePlan frame, FittingCount fitting)
    {
        var sizes = new Sizes(frame, fitting);
        var (radius, outer) = (sizes.Radius, sizes.Outer);
        List<Primitive> marks =
        [
            .. Body(sizes, 0),
            Polygon.Rectangle(new Bounds(sizes.End, -radius, sizes.Mouth + PipeShown, radius), Stroke.Edge, Fill.White),
            new Line(new Point(sizes.Mouth, -radius), new Point(sizes.Mouth, radius), Stroke.Heavy),
            new Label(new Point(sizes.Mouth + 2, radius - 2), "mark on the pipe", LabelPt),
            new Line(new Point(0, -outer - 3), new Point(0, sizes.Mouth + 3), Stroke.Centre),
            new Line(new Point(-sizes.Mouth - 3, 0), new Point(sizes.Mouth + PipeShown + 3, 0), Stroke.Centre),
            new Dimension(new Point(0, -outer), new Point(sizes.Stop, -outer), -Step, $"take-off {CutFormat.CutLength(fitting.TakeOff)}"),
        ];
        if (sizes.End - sizes.Stop > 0.05)
        {
            marks.Add(new Dimension(new Point(0, -outer), new Point(sizes.End, -outer), -2.2 * Step, $"with the gap {CutFormat.CutLength(fitting.ToPipeEnd)}"));
        }

        return new Drawing("What take-off is", $"A {fitting.Name} with a pipe pushed in: its take-off is {CutFormat.CutLength(fitting.TakeOff)} from its middle to the stop in its socket", marks);
    }

    // From mouth to mouth, less two depths.
    private static Drawing ByDepth(FramePlan frame, FittingCount fitting)
    {
        var sizes = new Sizes(frame, fitting);
        return new Drawing(
            "First way",
            "A fitting measured from mouth to mouth and to the stop in its socket",
            [
                .. Body(sizes, 0),
                new Dimension(new Point(-sizes.Mouth, -sizes.Outer), new Point(sizes.Mouth, -sizes.Outer), -Step, "m"),
                new Dimension(new Point(sizes.Stop, sizes.Outer), new Point(sizes.Mouth, sizes.Outer), Step, "d"),
            ]);
    }

    /// <summary>Two fittings on a piece of known length.</summary>
    public static Drawing ByPiece(FramePlan frame, FittingCount fitting)
    {
        var sizes = new Sizes(frame, fitting);
        var apart = 2 * (sizes.Mouth + 8);
        return new Drawing(
            "Second way",
            "Two fittings on a piece of pipe, measured from pipe to pipe in their branches",
            [
                .. Body(sizes, 0),
                .. Body(sizes, apart),
                Polygon.Rectangle(new Bounds(sizes.End, -sizes.Radius, apart - sizes.End, sizes.Radius), Stroke.Edge, Fill.White),
                .. new[] { 0, apart }.Select(Primitive (x) => Polygon.Rectangle(new Bounds(x - sizes.Radius, sizes.End, x + sizes.Radius, sizes.Mouth + 10), Stroke.Edge, Fill.White)),
                new Dimension(new Point(sizes.End, -sizes.Outer), new Point(apart - sizes.End, -sizes.Outer), -Step, "p"),
                new Dimension(new Point(-sizes.Radius, sizes.Mouth + 10), new Point(apart - sizes.Radius, sizes.Mouth + 10), Step, "c"),
            ]);
    }

    // A tee cut open: two sockets in line and one that points down.
    private static IEnumerable<Primitive> Body(Sizes sizes, double x) =>
    [
        Polygon.Rectangle(new Bounds(x - sizes.Outer, 0, x + sizes.Outer, sizes.Mouth), Stroke.Edge, Fill.LightGrey),
        Polygon.Rectangle(new Bounds(x - sizes.Mouth, -sizes.Outer, x + sizes.Mouth, sizes.Outer), Stroke.Edge, Fill.LightGrey),
        Polygon.Rectangle(new Bounds(x + sizes.Stop, -sizes.Radius, x + sizes.Mouth, sizes.Radius), Stroke.Thin, Fill.White),
        Polygon.Rectangle(new Bounds(x - sizes.Mouth, -sizes.Radius, x - sizes.Stop, sizes.Radius), Stroke.Thin, Fill.White),
        Polygon.Rectangle(new Bounds(x - sizes.Radius, sizes.Stop, x + sizes.Radius, sizes.Mouth), Stroke.Thin, Fill.White),
    ];

    /// <summary>The fitting to show: a tee where there is one.</summary>
    public static FittingCount Shown(FramePlan frame) =>
        frame.Fittings.FirstOrDefault(fitting => fitting.Kind == FittingKind.Tee) ?? frame.Fittings.FirstOrDefault(fitting => fitting.Kind is FittingKind.Corner or FittingKind.Elbow or FittingKind.Cross) ?? frame.Fittings[0];

    private sealed record Sizes(double Radius, double Outer, double Stop, double End, double Mouth)
    {
        public Sizes(FramePlan frame, FittingCount fitting)
            : this(Half(frame.PipeDiameter), Half(frame.PipeDiameter) * (1 + (2 * WallShare)), fitting.TakeOff.Millimeters, fitting.ToPipeEnd.Millimeters, fitting.ToMark.Millimeters)
        {
        }

        private static double Half(Length length) => length.Millimeters / 2;
    }
}
