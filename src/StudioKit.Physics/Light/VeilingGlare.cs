using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>Stray light that a large blown background spreads over the whole picture, lifting its shadows.</summary>
/// <remarks>The sensor clips at white, the stray light does not: it goes on growing with the background's true exposure.</remarks>
public static class VeilingGlare
{
    /// <summary>Level of the glare on a linear scale whose 1 is clipping.</summary>
    /// <param name="glareIndex">Veiling glare index V of lens and camera [1]; 0 to 1.</param>
    /// <param name="backgroundFraction">Share of the frame that the background takes A [1]; 0 to 1.</param>
    /// <param name="margin">Stops k by which the background lies above clipping.</param>
    /// <returns>g = V·A·2ᵏ [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside 0 to 1.</exception>
    [Source("Iso9358", "veiling glare index, integral method")]
    [Source("McCann2007", "glare is a share of the scene's light, not of the recorded picture's")]
    public static double Level(double glareIndex, double backgroundFraction, Stops margin) =>
        Guard.Between(glareIndex, 0, 1) * Guard.Between(backgroundFraction, 0, 1) * margin.Ratio;

    /// <summary>How far the glare lifts a tone.</summary>
    /// <param name="tone">Tone without glare, on a linear scale whose 1 is clipping [1]; &gt; 0. Mid-grey lies near 0.127.</param>
    /// <param name="glareLevel">Level g of the glare [1]; ≥ 0.</param>
    /// <returns>log₂(1 + g/tone) [stops].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "glare adds the same exposure to every tone")]
    public static Stops ShadowLift(double tone, double glareLevel) =>
        new(Math.Log2(1 + (Guard.NonNegative(glareLevel) / Guard.Positive(tone))));

    /// <summary>The greatest white margin whose veil is still accepted.</summary>
    /// <param name="glareIndex">Veiling glare index V of lens and camera [1]; 0 to 1.</param>
    /// <param name="backgroundFraction">Share of the frame that the background takes A [1]; 0 to 1.</param>
    /// <param name="tone">Tone that is watched, on a linear scale whose 1 is clipping [1]; &gt; 0.</param>
    /// <param name="limit">Lift accepted on it; above 0 stops.</param>
    /// <returns>k = log₂(tone·(2^limit − 1)/(V·A)) [stops]; 30 where there is no glare to speak of.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "shadow lift solved for the margin")]
    public static Stops LargestMargin(double glareIndex, double backgroundFraction, double tone, Stops limit)
    {
        const double Unbounded = 30;
        Guard.Positive(limit.Value, nameof(limit));
        var share = Guard.Between(glareIndex, 0, 1) * Guard.Between(backgroundFraction, 0, 1);
        var accepted = Guard.Positive(tone) * (limit.Ratio - 1);
        return new Stops(share > 0 ? Math.Min(Unbounded, Math.Log2(accepted / share)) : Unbounded);
    }
}
