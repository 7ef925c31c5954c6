using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>The outline of a round bar or pipe that runs along an axis of the frame.</summary>
/// <param name="From">Middle of its first end [m].</param>
/// <param name="To">Middle of its second end [m].</param>
/// <param name="Radius">Its radius [m].</param>
internal readonly record struct Tube(FramePoint From, FramePoint To, double Radius)
{
    // Of half a turn: corners stray by a hundredth of the radius, which is under 0.05 mm on paper.
    private const int Steps = 9;

    private FramePoint Way => (1 / (To - From).Norm) * (To - From);

    /// <summary>Its silhouette, filled.</summary>
    public Primitive Outline(Camera camera, Ink ink)
    {
        var (start, end) = (camera.At(From), camera.At(To));
        if (start.DistanceTo(end) < 1e-6)
        {
            return new Circle(start, Radius * camera.PerMetre, ink.Edge, ink.Face);
        }

        return new Polygon([.. Half(camera, From, start, end), .. Half(camera, To, end, start)], ink.Edge, ink.Face);
    }

    /// <summary>Its second end where that faces the reader: a disc, hollow where a bore is given.</summary>
    public IEnumerable<Primitive> End(Camera camera, Ink ink, double bore)
    {
        if (Way.Dot(camera.Towards) <= 1e-9 || camera.At(From).DistanceTo(camera.At(To)) < 1e-6)
        {
            return bore > 0 && Way.Dot(camera.Towards) > 0 ? [new Circle(camera.At(To), bore * camera.PerMetre, ink.Edge, Fill.Grey)] : [];
        }

        var disc = new Polygon(Ring(camera, To, Radius), ink.Edge, ink.Face);
        return bore > 0 ? [disc, new Polygon(Ring(camera, To, bore), Stroke.Thin, Fill.Grey)] : [disc];
    }

    /// <summary>A line round it, as far as it is seen.</summary>
    public Primitive Mark(Camera camera, FramePoint at, Stroke stroke)
    {
        var (start, end) = (camera.At(From), camera.At(To));
        var here = camera.At(at);
        var (from, to) = Way.Dot(camera.Towards) >= 0 ? (start, end) : (end, start);
        return new Polyline([.. Half(camera, at, here, here.Plus(from.X - to.X, from.Y - to.Y))], stroke);
    }

    // The half of the ring about a middle that lies away from another point.
    private List<Point> Half(Camera camera, FramePoint middle, Point at, Point away)
    {
        var (u, v) = Across(camera, middle, Radius);
        var (dx, dy) = (away.X - at.X, away.Y - at.Y);
        var first = Math.Atan2((dx * v.Y) - (dy * v.X), (dx * u.Y) - (dy * u.X));
        var quarter = first + (Math.PI / 2);
        var outward = -((dx * ((u.X * Math.Cos(quarter)) + (v.X * Math.Sin(quarter)))) + (dy * ((u.Y * Math.Cos(quarter)) + (v.Y * Math.Sin(quarter)))));
        var flat = Math.Abs(outward) < 1e-6 * camera.PerMetre * Math.Max(1, double.Hypot(dx, dy));
        var turn = outward < 0 ? -Math.PI : Math.PI;
        var points = new List<Point>();
        for (var i = 0; i <= Steps; i += flat ? Steps : 1)
        {
            var (sin, cos) = Math.SinCos(first + (turn * i / Steps));
            points.Add(at.Plus((u.X * cos) + (v.X * sin), (u.Y * cos) + (v.Y * sin)));
        }

        // Seen along the way the two halves follow each other only if they turn alike.
        return Clockwise(points, at, dx, dy) ? points : [.. Enumerable.Reverse(points)];
    }

    private static bool Clockwise(List<Point> points, Point at, double dx, double dy) =>
        (dx * (points[0].Y - at.Y)) - (dy * (points[0].X - at.X)) > 0;

    private List<Point> Ring(Camera camera, FramePoint middle, double radius)
    {
        var (at, (u, v)) = (camera.At(middle), Across(camera, middle, radius));
        var points = new List<Point>(2 * Steps);
        for (var i = 0; i < 2 * Steps; i++)
        {
            var (sin, cos) = Math.SinCos(Math.PI * i / Steps);
            points.Add(at.Plus((u.X * cos) + (v.X * sin), (u.Y * cos) + (v.Y * sin)));
        }

        return points;
    }

    // Two radii of the ring, square to each other in space.
    private (Point U, Point V) Across(Camera camera, FramePoint middle, double radius)
    {
        var way = Way;
        var u = Math.Abs(way.Up) > 0.5 ? new FramePoint(1, 0, 0) : new FramePoint(0, 0, 1);
        var v = Math.Abs(way.Right) > 0.5 || Math.Abs(way.Up) > 0.5 ? new FramePoint(0, 1, 0) : new FramePoint(1, 0, 0);
        var at = camera.At(middle);
        var (one, other) = (camera.At(middle + (radius * u)), camera.At(middle + (radius * v)));
        return (new Point(one.X - at.X, one.Y - at.Y), new Point(other.X - at.X, other.Y - at.Y));
    }
}
