using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Share of a point's hemisphere, weighed by the cosine, that a flat polygon fills: exact, by Lambert's sum over its edges.</summary>
internal static class PolygonFactor
{
    /// <summary>Form factor from a point of a surface to a four-cornered patch [1].</summary>
    /// <remarks>F = |Σ βᵢ·n·(rᵢ × rᵢ₊₁)/|rᵢ × rᵢ₊₁||/(2π), βᵢ the angle an edge fills; what lies under the horizon is cut off first.</remarks>
    [Source("Baum1989", "form factor of a differential area and a polygon, after Lambert")]
    public static double From(Position point, Direction normal, in Patch patch)
    {
        Span<Position> corners = [patch.A, patch.B, patch.C, patch.D];
        Span<Position> above = stackalloc Position[8];
        var count = Clip(point, normal, corners, above);
        var sum = 0.0;
        for (var i = 0; i < count; i++)
        {
            sum += Edge(point, normal, above[i], above[(i + 1) % count]);
        }

        return Math.Abs(sum) / (2 * Math.PI);
    }

    /// <summary>What of a polygon lies on a plane's front side, corners in order.</summary>
    public static int Clip(Position point, Direction normal, ReadOnlySpan<Position> corners, Span<Position> above)
    {
        var count = 0;
        for (var i = 0; i < corners.Length; i++)
        {
            var (here, next) = (corners[i], corners[(i + 1) % corners.Length]);
            var (rise, nextRise) = (normal.Dot(point, here), normal.Dot(point, next));
            if (rise >= 0)
            {
                above[count++] = here;
            }

            if (rise * nextRise < 0)
            {
                above[count++] = Position.Between(here, next, rise / (rise - nextRise));
            }
        }

        return count;
    }

    private static double Edge(Position point, Direction normal, Position from, Position to)
    {
        var (ax, ay, az) = (from.X - point.X, from.Y - point.Y, from.Z - point.Z);
        var (bx, by, bz) = (to.X - point.X, to.Y - point.Y, to.Z - point.Z);
        var (cx, cy, cz) = ((ay * bz) - (az * by), (az * bx) - (ax * bz), (ax * by) - (ay * bx));
        var sine = Math.Sqrt((cx * cx) + (cy * cy) + (cz * cz));
        if (sine < 1e-15)
        {
            return 0;
        }

        var angle = Math.Atan2(sine, (ax * bx) + (ay * by) + (az * bz));
        return angle * ((normal.X * cx) + (normal.Y * cy) + (normal.Z * cz)) / sine;
    }
}
