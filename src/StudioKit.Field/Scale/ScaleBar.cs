using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Scale;

/// <summary>A scale bar of a round length.</summary>
/// <param name="Length">True length [m].</param>
/// <param name="Pixels">Length in the picture, in pixels [1].</param>
/// <param name="Label">Length in words, e.g. <c>5 mm</c> or <c>200 µm</c>.</param>
public sealed record ScaleBar(double Length, double Pixels, string Label)
{
    private const double LargestShare = 0.25;

    /// <summary>The longest bar of 1, 2 or 5 times a power of ten that takes up at most a quarter of the picture's width.</summary>
    /// <param name="metresPerPixel">Size of a pixel at the subject [m]; &gt; 0.</param>
    /// <param name="pictureWidth">Pixels across the picture as seen [1]; ≥ 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("CommonPractice", "scale bars of 1, 2 or 5 units")]
    public static ScaleBar For(double metresPerPixel, int pictureWidth)
    {
        // The least bit more, so that a length that just fits is not lost to rounding.
        var longest = LargestShare * Guard.Positive(pictureWidth) * Guard.Positive(metresPerPixel) * (1 + 1e-9);
        var decade = Math.Pow(10, Math.Floor(Math.Log10(longest)));
        var digit = longest / decade >= 5 ? 5 : longest / decade >= 2 ? 2 : 1;
        var length = digit * decade;
        return new ScaleBar(length, length / metresPerPixel, Name(length));
    }

    private static string Name(double length) => length switch
    {
        >= 0.999 => FormattableString.Invariant($"{length:0.###} m"),
        >= 0.00999 => FormattableString.Invariant($"{length * 100:0.###} cm"),
        >= 0.000999 => FormattableString.Invariant($"{length * 1000:0.###} mm"),
        _ => FormattableString.Invariant($"{length * 1e6:0.######} µm"),
    };
}
