using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>How far an extended flash head falls short of the inverse-square law close by, on its axis.</summary>
/// <remarks>
/// The law holds within 1 % beyond five head diameters. Every point of the head is taken to send out the same lobe; the guide
/// number is taken to have been measured far away.
/// </remarks>
public static class NearField
{
    /// <summary>Share of the inverse-square light that arrives from a disc.</summary>
    /// <param name="radius">Radius R of the bright window; ≥ 0 m.</param>
    /// <param name="distance">Window to surface d; &gt; 0 m.</param>
    /// <param name="lobeExponent">Exponent n of the window's cosⁿ lobe [1]; ≥ 0, 1 is Lambertian.</param>
    /// <returns>2d²/((n + 1)R²)·(1 − (d²/(d² + R²))^((n + 1)/2)) [1], which is d²/(d² + R²) at n = 1; above 0, at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("Howell", "configuration factor of a disc to an element on its axis, generalised to cosⁿ by integration")]
    public static double DiscFactor(Length radius, Length distance, double lobeExponent = 1)
    {
        var ratio = Guard.NonNegative(radius.Meters, nameof(radius)) / Guard.Positive(distance.Meters, nameof(distance));
        return DiscFactor(ratio * ratio, Guard.NonNegative(lobeExponent));
    }

    /// <summary>Share of the inverse-square light that arrives from a matt rectangle.</summary>
    /// <param name="width">Width of the bright window; ≥ 0 m.</param>
    /// <param name="height">Height of the bright window; ≥ 0 m.</param>
    /// <param name="distance">Window to surface d; &gt; 0 m.</param>
    /// <returns>π·F·d²/(width·height), F the configuration factor from an element facing the centre [1]; above 0, at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("Howell", "configuration factor of a rectangle to a parallel element")]
    public static double RectangleFactor(Length width, Length height, Length distance)
    {
        var d = Guard.Positive(distance.Meters, nameof(distance));
        return RectangleFactor(
            Guard.NonNegative(width.Meters, nameof(width)) / (2 * d), Guard.NonNegative(height.Meters, nameof(height)) / (2 * d));
    }

    // In half sides over distance. Below 1e-6 the correction is under 1e-12 and its formula divides nothing by nothing.
    internal static double RectangleFactor(double x, double y)
    {
        if (x < 1e-6 || y < 1e-6)
        {
            return x < 1e-6 && y < 1e-6 ? 1 : StripFactor(Math.Max(x, y));
        }

        var a = Math.Sqrt(1 + (x * x));
        var b = Math.Sqrt(1 + (y * y));
        return ((x / a * Math.Atan(y / a)) + (y / b * Math.Atan(x / b))) / (2 * x * y);
    }

    // Narrow strip of half length x: the limit of the rectangle's formula as the other side vanishes.
    private static double StripFactor(double x) => ((1 / (1 + (x * x))) + (Math.Atan(x) / x)) / 2;

    // With s = R²/d²; a series stands in where the closed form would lose its digits.
    private static double DiscFactor(double s, double n) =>
        s < 1e-7
            ? 1 - ((n + 3) / 4 * s)
            : 2 / ((n + 1) * s) * (1 - Math.Pow(1 + s, -(n + 1) / 2));
}
