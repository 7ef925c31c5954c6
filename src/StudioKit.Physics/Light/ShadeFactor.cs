using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>Share of an even sky, by the cosine law, that a level shade hides from a point of the ground under or beside it.</summary>
public static class ShadeFactor
{
    /// <summary>Of a round shade.</summary>
    /// <param name="radius">Radius r [m]; &gt; 0.</param>
    /// <param name="height">Point to the shade's plane h [m]; &gt; 0.</param>
    /// <param name="aside">Point to the axis through the shade's middle a [m]; ≥ 0.</param>
    /// <returns>F = ½·(1 − (1 + H² − R²)/√((1 + H² + R²)² − 4R²)) with H = h/a, R = r/a; r²/(h² + r²) under the middle [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, or not finite.</exception>
    [Source("Howell", "element to a disc in a parallel plane, the disc's axis beside the element")]
    public static double OfDisc(double radius, double height, double aside)
    {
        // Multiplied out by a², so that it holds under the middle too.
        var (r, h, a) = (Square(Guard.Positive(radius)), Square(Guard.Positive(height)), Square(Guard.NonNegative(aside)));
        return (1 - ((a + h - r) / Math.Sqrt(Square(a + h + r) - (4 * r * a)))) / 2;
    }

    /// <summary>Of a four-sided shade that is moved along one of its sides.</summary>
    /// <param name="along">Its side along the way it is moved [m]; &gt; 0.</param>
    /// <param name="across">Its other side [m]; &gt; 0.</param>
    /// <param name="height">Point to the shade's plane [m]; &gt; 0.</param>
    /// <param name="aside">How far its middle is moved from over the point [m]; ≥ 0.</param>
    /// <returns>F [1]; 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range, or not finite.</exception>
    [Source("Howell", "configuration B-3, sum over corner rectangles")]
    public static double OfRectangle(double along, double across, double height, double aside)
    {
        var h = Guard.Positive(height);
        var (half, y, a) = (Guard.Positive(along) / 2 / h, Guard.Positive(across) / 2 / h, Guard.NonNegative(aside) / h);
        return 2 * (Corner(a + half, y) - Corner(a - half, y));
    }

    // Odd in x, as a rectangle on the far side of the point counts the other way.
    private static double Corner(double x, double y)
    {
        var (p, q) = (Math.Sqrt(1 + (x * x)), Math.Sqrt(1 + (y * y)));
        return ((x / p * Math.Atan(y / p)) + (y / q * Math.Atan(x / q))) / (2 * Math.PI);
    }

    private static double Square(double value) => value * value;
}
