using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>Form factors in closed form: the share of a diffuse surface's light that falls on another.</summary>
public static class FormFactor
{
    /// <summary>From a point of a plane to a parallel rectangle, the point on the axis through the rectangle's centre.</summary>
    /// <param name="width">One side of the rectangle [m]; &gt; 0.</param>
    /// <param name="depth">The other side [m]; &gt; 0.</param>
    /// <param name="distance">Point to rectangle [m]; &gt; 0.</param>
    /// <returns>F [1]; 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is not above zero.</exception>
    [Source("Howell", "configuration B-3, four corner rectangles")]
    public static double PointToRectangle(double width, double depth, double distance)
    {
        var a = Guard.Positive(width) / 2 / Guard.Positive(distance);
        var b = Guard.Positive(depth) / 2 / distance;
        var (p, q) = (Math.Sqrt(1 + (a * a)), Math.Sqrt(1 + (b * b)));
        return 4 / (2 * Math.PI) * ((a / p * Math.Atan(b / p)) + (b / q * Math.Atan(a / q)));
    }

    /// <summary>Exchange area A₁·F₁₂ of any two rectangles in parallel planes with parallel sides [m²].</summary>
    [Source("Howell", "configuration C-13, sum over sixteen corner pairs")]
    internal static double ParallelExchange(
        double x1, double x2, double y1, double y2, double u1, double u2, double v1, double v2, double distance)
    {
        double Column(double u, double v) =>
            ParallelCorner(x2 - u, y2 - v, distance) - ParallelCorner(x1 - u, y2 - v, distance)
            - ParallelCorner(x2 - u, y1 - v, distance) + ParallelCorner(x1 - u, y1 - v, distance);

        return Column(u1, v1) - Column(u2, v1) - Column(u1, v2) + Column(u2, v2);
    }

    /// <summary>Exchange area of two rectangles in planes at right angles; x runs along the planes' common line [m²].</summary>
    /// <remarks>The first spans y1 to y2 from the common line, the second z1 to z2.</remarks>
    [Source("Howell", "configuration C-15, sum over sixteen corner pairs")]
    internal static double PerpendicularExchange(
        double x1, double x2, double y1, double y2, double u1, double u2, double z1, double z2)
    {
        double Column(double y, double z) =>
            PerpendicularCorner(x2 - u1, y, z) - PerpendicularCorner(x1 - u1, y, z)
            - PerpendicularCorner(x2 - u2, y, z) + PerpendicularCorner(x1 - u2, y, z);

        return Column(y1, z1) - Column(y2, z1) - Column(y1, z2) + Column(y2, z2);
    }

    private static double ParallelCorner(double x, double y, double c)
    {
        var (p, q) = (Math.Sqrt((x * x) + (c * c)), Math.Sqrt((y * y) + (c * c)));
        var sum = (y * p * Math.Atan(y / p)) + (x * q * Math.Atan(x / q))
            - (c * c / 2 * Math.Log((x * x) + (y * y) + (c * c)));
        return sum / (2 * Math.PI);
    }

    private static double PerpendicularCorner(double x, double y, double z)
    {
        var square = (y * y) + (z * z);
        var all = square + (x * x);
        if (all <= 0)
        {
            return 0;
        }

        var root = Math.Sqrt(square);
        var angle = root > 0 ? x * root * Math.Atan(x / root) : 0;
        return (angle + (((x * x) - square) / 4 * Math.Log(all))) / -(2 * Math.PI);
    }
}
