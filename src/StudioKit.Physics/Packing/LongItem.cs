using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>Whether a rod goes into a bag, and how.</summary>
public static class LongItem
{
    // Longer than this share of the bag, a strapped rod catches on branches and door frames.
    private const double Sticking = 1.1;

    /// <summary>Longest rod that lies in a rectangle.</summary>
    /// <param name="diameter">Diameter of the rod d [m]; above 0, at most the shorter side.</param>
    /// <param name="length">Longer side of the rectangle a [m]; &gt; 0.</param>
    /// <param name="width">Shorter side b [m]; above 0, at most a.</param>
    /// <returns>Greatest over θ of min((a − d·sin θ)/cos θ, (b − d·cos θ)/sin θ), never under a [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>The rod counts as a rectangle L × d. As the rod turns, the first bound rises past the second where both are equal.</remarks>
    [Source("Derived", "rectangle inside a rectangle")]
    public static double LongestInRectangle(double diameter, double length, double width)
    {
        var a = Guard.Positive(length);
        var b = Guard.Between(Guard.Positive(width), 0, a);
        var d = Guard.Between(Guard.Positive(diameter), 0, b);
        var (low, high) = (1e-9, Math.PI / 2);
        for (var i = 0; i < 100; i++)
        {
            var middle = (low + high) / 2;
            var (along, across) = Bounds(middle, a, b, d);
            (low, high) = along < across ? (middle, high) : (low, middle);
        }

        var (first, second) = Bounds(low, a, b, d);
        return Math.Max(a, Math.Min(first, second));
    }

    /// <summary>Where a rod goes.</summary>
    /// <param name="length">Length of the rod; &gt; 0.</param>
    /// <param name="diameter">Its diameter; above 0, at most the bag's width.</param>
    /// <param name="inside">Inside of the bag.</param>
    /// <returns>Inside along the bag, inside corner to corner, or strapped outside.</returns>
    /// <exception cref="ArgumentNullException">There is no bag.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("Derived", "rectangle inside a rectangle")]
    public static LongItemResult Place(Length length, Length diameter, BoxSize inside)
    {
        ArgumentNullException.ThrowIfNull(inside);
        var rod = Guard.Positive(length.Meters, nameof(length));
        var longest = LongestInRectangle(diameter.Meters, inside.Longest.Meters, inside.Middle.Meters);
        if (rod <= longest)
        {
            var placement = length <= inside.Longest ? LongItemPlacement.AlongBag : LongItemPlacement.CornerToCorner;
            return new LongItemResult(placement, Length.FromMeters(longest), false);
        }

        return new LongItemResult(LongItemPlacement.StrappedOutside, Length.FromMeters(longest), rod > Sticking * inside.Longest.Meters);
    }

    private static (double Along, double Across) Bounds(double angle, double a, double b, double d)
    {
        var (sin, cos) = Math.SinCos(angle);
        return ((a - (d * sin)) / cos, (b - (d * cos)) / sin);
    }
}
