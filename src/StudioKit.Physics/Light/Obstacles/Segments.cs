using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Obstacles;

/// <summary>Straight ways beside each other.</summary>
internal static class Segments
{
    /// <summary>Square of the sine of the angle between two ways [1] under which they are nowhere nearer than elsewhere.</summary>
    public const double Parallel = 1e-12;

    /// <summary>Least squared distance of two segments [m²]: the free minimum on both lines, clamped to one, then to the other.</summary>
    [Source("Derived", "least squares of two points, each on its segment")]
    public static double SquareBetween(Position from, Position to, Position start, Position end)
    {
        var (a, e, b) = (from.SquareTo(to), start.SquareTo(end), Inner(from, to, start, end));
        var (c, f) = (Inner(from, to, start, from), Inner(start, end, start, from));
        var determinant = (a * e) - (b * b);
        var s = determinant > Parallel * a * e ? Math.Clamp(((b * f) - (c * e)) / determinant, 0, 1) : 0;
        var t = e > 0 ? ((b * s) + f) / e : 0;
        if (t is < 0 or > 1)
        {
            t = Math.Clamp(t, 0, 1);
            s = a > 0 ? Math.Clamp(((b * t) - c) / a, 0, 1) : 0;
        }

        return Position.Between(from, to, s).SquareTo(Position.Between(start, end, t));
    }

    /// <summary>Inner product of the ways from one place to another [m²].</summary>
    public static double Inner(Position a, Position b, Position c, Position d) =>
        ((b.X - a.X) * (d.X - c.X)) + ((b.Y - a.Y) * (d.Y - c.Y)) + ((b.Z - a.Z) * (d.Z - c.Z));
}
