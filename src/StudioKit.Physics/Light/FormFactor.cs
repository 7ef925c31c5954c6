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

    /// <summary>What one pair of corners gives to the exchange area A₁·F₁₂ of two rectangles in parallel planes with parallel sides [m²].</summary>
    /// <param name="x">How far the corners are apart along one side [m].</param>
    /// <param name="y">And along the other [m].</param>
    /// <param name="c">Distance of the planes [m]; &gt; 0.</param>
    [Source("Howell", "configuration C-13, sum over sixteen corner pairs")]
    internal static double ParallelCorner(double x, double y, double c)
    {
        var (p, q) = (Math.Sqrt((x * x) + (c * c)), Math.Sqrt((y * y) + (c * c)));
        var sum = (y * p * VectorMath.Atan(y / p)) + (x * q * VectorMath.Atan(x / q))
            - (c * c / 2 * VectorMath.Log((x * x) + (y * y) + (c * c)));
        return sum / (2 * Math.PI);
    }

    /// <summary>The same of two rectangles in planes at right angles [m²].</summary>
    /// <param name="x">How far the corners are apart along the planes' common line [m].</param>
    /// <param name="y">How far the one is from that line [m].</param>
    /// <param name="z">How far the other is [m].</param>
    [Source("Howell", "configuration C-15, sum over sixteen corner pairs")]
    internal static double PerpendicularCorner(double x, double y, double z)
    {
        var square = (y * y) + (z * z);
        var all = square + (x * x);
        if (all <= 0)
        {
            return 0;
        }

        var root = Math.Sqrt(square);
        var angle = root > 0 ? x * root * VectorMath.Atan(x / root) : 0;
        return (angle + (((x * x) - square) / 4 * VectorMath.Log(all))) / -(2 * Math.PI);
    }
}
