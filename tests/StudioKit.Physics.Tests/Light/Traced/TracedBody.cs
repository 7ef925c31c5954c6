using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;

namespace StudioKit.Physics.Tests.Light.Traced;

/// <summary>Whether a black body stands between two places: where the straight line enters and leaves it, by its equation.</summary>
internal static class TracedBody
{
    public static Func<Position, Position, bool> Of(Obstacle obstacle) => obstacle switch
    {
        PipeObstacle pipe => Pipe(pipe),
        BoxObstacle box => Box(box),
        _ => throw new ArgumentOutOfRangeException(nameof(obstacle), obstacle, "There is no equation for this body."),
    };

    // A round bar with a ball on each end.
    private static Func<Position, Position, bool> Pipe(PipeObstacle pipe)
    {
        var (start, end, radius) = (pipe.Start, pipe.End, pipe.Diameter.Meters / 2);
        var length = start.DistanceTo(end);
        var axis = Step(start, end, 1 / length);
        return (from, to) =>
        {
            var (m, d) = (Step(start, from, 1), Step(from, to, 1));
            var (along, rise) = (Inner(m, axis), Inner(d, axis));
            var bar = Inside(Inner(d, d) - (rise * rise), Inner(m, d) - (along * rise), Inner(m, m) - (along * along) - (radius * radius));
            if (bar.Enter > bar.Leave)
            {
                return false;
            }

            var (low, high) = (along + (rise * bar.Enter), along + (rise * bar.Leave));
            return (Math.Max(low, high) >= 0 && Math.Min(low, high) <= length) || Ball(start, radius, from, d) || Ball(end, radius, from, d);
        };
    }

    private static bool Ball(Position centre, double radius, Position from, (double X, double Y, double Z) d)
    {
        var m = Step(centre, from, 1);
        var (enter, leave) = Inside(Inner(d, d), Inner(m, d), Inner(m, m) - (radius * radius));
        return enter <= leave;
    }

    // Where a·t² + 2b·t + c ≤ 0 between 0 and 1; entered after it is left where nowhere.
    private static (double Enter, double Leave) Inside(double a, double b, double c)
    {
        if (a < 1e-18)
        {
            return c <= 0 ? (0, 1) : (1, 0);
        }

        var square = (b * b) - (a * c);
        if (square < 0)
        {
            return (1, 0);
        }

        var root = Math.Sqrt(square);
        return (Math.Max(0, (-b - root) / a), Math.Min(1, (-b + root) / a));
    }

    private static Func<Position, Position, bool> Box(BoxObstacle box)
    {
        var halves = box.Hull.Half;
        (Direction Normal, double Half)[] pairs = [(box.Orientation.Across, halves.Across), (box.Orientation.Along, halves.Along), (box.Orientation.Axis, halves.Axis)];
        var centre = box.Centre;
        return (from, to) =>
        {
            var (enter, leave, m, d) = (0.0, 1.0, Step(centre, from, 1), Step(from, to, 1));
            foreach (var (normal, half) in pairs)
            {
                var n = (normal.X, normal.Y, normal.Z);
                var (place, step) = (Inner(n, m), Inner(n, d));
                var (one, other) = ((-half - place) / step, (half - place) / step);
                (enter, leave) = (Math.Max(enter, Math.Min(one, other)), Math.Min(leave, Math.Max(one, other)));
            }

            return enter < leave;
        };
    }

    private static (double X, double Y, double Z) Step(Position from, Position to, double scale) =>
        (scale * (to.X - from.X), scale * (to.Y - from.Y), scale * (to.Z - from.Z));

    private static double Inner((double X, double Y, double Z) a, (double X, double Y, double Z) b) => (a.X * b.X) + (a.Y * b.Y) + (a.Z * b.Z);
}
