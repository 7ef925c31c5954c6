using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Building;

/// <summary>The frame pulled apart at every joint, with every piece and fitting labelled.</summary>
internal static class ExplodedDrawing
{
    private const double WidthOnPaper = 148;
    private const double HeightOnPaper = 185;
    private const double JointRadius = 1.7;
    private const double PipeHalf = 0.8;

    // Joints are drawn apart by this share of the frame's reach, whatever lies between them; further from front to back, as the
    // legs of a square frame would otherwise stand behind each other.
    private const double Pull = 0.14;
    private const double PullBack = 0.3;

    public static Drawing Of(FramePlan frame)
    {
        var places = Apart(frame.Geometry);
        var flat = places.Values.Select(FrameView.Isometric.Project).ToList();
        var bounds = Bounds.Of(flat);
        var scale = Math.Min(WidthOnPaper / bounds.Width, HeightOnPaper / bounds.Height);
        Point At(FramePoint point)
        {
            var place = FrameView.Isometric.Project(point);
            return new Point(place.X * scale, place.Y * scale);
        }

        return new Drawing(
            "Exploded view, not to scale",
            "Every pipe and fitting of the frame, pulled apart, with its label",
            [.. Marks(frame, places, At, scale)]);
    }

    // Along each axis, every distance between neighbouring joints grows by the same pull, so that each pipe comes clear of its fittings.
    private static Dictionary<string, FramePoint> Apart(FrameResult frame)
    {
        var (right, back, up) = (Stretch(frame, Pull, point => point.Right), Stretch(frame, PullBack, point => point.Back), Stretch(frame, Pull, point => point.Up));
        return frame.Joints.ToDictionary(
            joint => joint.Label,
            joint => new FramePoint(right(joint.Position.Right), back(joint.Position.Back), up(joint.Position.Up)),
            StringComparer.Ordinal);
    }

    private static Func<double, double> Stretch(FrameResult frame, double share, Func<FramePoint, double> axis)
    {
        var stops = frame.Joints.Select(joint => Math.Round(axis(joint.Position), 5)).Distinct().Order().ToList();
        var pull = share * frame.Joints.Max(joint => Math.Max(Math.Abs(joint.Position.Right), Math.Max(Math.Abs(joint.Position.Back), joint.Position.Up)));
        return value => value + (pull * stops.IndexOf(Math.Round(value, 5)));
    }

    private static IEnumerable<Primitive> Marks(FramePlan frame, Dictionary<string, FramePoint> places, Func<FramePoint, Point> at, double scale)
    {
        var placer = new LabelPlacer();
        foreach (var member in frame.Geometry.Members)
        {
            placer.AvoidLine(at(places[member.From]), at(places[member.To]), PipeHalf);
        }

        foreach (var joint in frame.Geometry.Joints)
        {
            var place = at(places[joint.Label]);
            placer.Avoid(new Bounds(place.X, place.Y, place.X, place.Y).Grown(JointRadius));
        }

        foreach (var member in frame.Geometry.Members)
        {
            yield return new Line(at(places[member.From]), at(places[member.To]), Stroke.Centre);
            yield return Pipe(member, at(places[member.From]), at(places[member.To]), scale);
        }

        foreach (var joint in frame.Geometry.Joints)
        {
            yield return new Circle(at(places[joint.Label]), JointRadius, Stroke.Edge, joint.Pinned ? Fill.Grey : Fill.White);
        }

        foreach (var label in frame.Geometry.Members.SelectMany(member => placer.Place(Middle(at(places[member.From]), at(places[member.To])), member.Label, PipeHalf + 0.5, -Math.PI / 2))
            .Concat(frame.Geometry.Joints.SelectMany(joint => placer.Place(at(places[joint.Label]), joint.Label, JointRadius + 0.4, Math.PI / 4, TextWeight.Regular, 7))))
        {
            yield return label;
        }
    }

    private static Polygon Pipe(FrameMember member, Point from, Point to, double scale)
    {
        var (middle, length) = (Middle(from, to), from.DistanceTo(to));
        var half = Math.Min(member.CutLength.Millimeters * scale, length - (2 * JointRadius) - 1) / 2;
        var (ux, uy) = ((to.X - from.X) / length, (to.Y - from.Y) / length);
        var bar = BarCorners.Of(middle.Plus(-half * ux, -half * uy), middle.Plus(half * ux, half * uy), PipeHalf);
        return new Polygon([bar.ToRight, bar.ToLeft, bar.FromLeft, bar.FromRight], Stroke.Edge, Fill.White);
    }

    private static Point Middle(Point from, Point to) => new((from.X + to.X) / 2, (from.Y + to.Y) / 2);
}
