using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>Shadow lift that veiling glare of a large blown background lays over the subject.</summary>
/// <remarks>
/// The veil, as a share of saturation, is g = V·A·2^k: V the veiling glare index, A the share of the picture that the background
/// fills, k the white margin.
/// The pixel clips but the glare does not, so every stop of white margin doubles it.
/// </remarks>
public static class Veil
{
    /// <summary>Veil over the whole picture.</summary>
    /// <param name="whiteMargin">Mean white margin of the background k.</param>
    /// <param name="glareIndex">Veiling glare index V [1]; 0 to 1.</param>
    /// <param name="backgroundShare">Share of the picture the background fills A [1]; 0 to 1.</param>
    /// <returns>g, as a share of saturation [1]; ≥ 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("Iso9358", "veiling glare index; doubled per stop over clipping by superposition")]
    public static double ShareOfSaturation(Stops whiteMargin, double glareIndex, double backgroundShare = 1) =>
        Guard.Finite(Guard.Between(glareIndex, 0, 1) * Guard.Between(backgroundShare, 0, 1) * whiteMargin.Ratio);

    /// <summary>How much the veil lifts a tone.</summary>
    /// <param name="veil">Veil g as a share of saturation [1]; ≥ 0.</param>
    /// <param name="tone">Tone as a share of saturation [1]; &gt; 0. A mid-tone has about 0.127.</param>
    /// <returns>log₂(1 + g/tone).</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("Derived", "superposition of veil and tone")]
    public static Stops Lift(double veil, double tone) => new(Math.Log2(1 + (Guard.NonNegative(veil) / Guard.Positive(tone))));

    /// <summary>White margin at which the lift of a mid-tone reaches a limit.</summary>
    /// <param name="limit">Lift still accepted; &gt; 0 stops.</param>
    /// <param name="glareIndex">Veiling glare index V [1]; 0 to 1.</param>
    /// <param name="backgroundShare">Share of the picture the background fills A [1]; 0 to 1.</param>
    /// <param name="midToneUnderClipping">Stops from the mid-tone up to clipping.</param>
    /// <returns>Highest white margin; at most 20 stops, which stands for none where there is no glare.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("Derived", "lift of a mid-tone solved for the white margin")]
    public static Stops HighestMargin(Stops limit, double glareIndex, double backgroundShare, Stops midToneUnderClipping)
    {
        var glare = Guard.Between(glareIndex, 0, 1) * Guard.Between(backgroundShare, 0, 1);
        var accepted = (Math.Pow(2, Guard.Positive(limit.Value, nameof(limit))) - 1) / midToneUnderClipping.Ratio;
        return new Stops(glare > 0 ? Math.Min(20, Math.Log2(accepted / glare)) : 20);
    }

    /// <summary>Limit that leaves room for a background that is brighter somewhere than is known where the limit is applied.</summary>
    /// <param name="limit">Lift still accepted; &gt; 0 stops.</param>
    /// <param name="brighter">Stops by which the brightest place lies over what is known of it; ≥ 0.</param>
    /// <returns>log₂(1 + (2^limit − 1)·2^(−brighter)): its highest margin lies so much lower.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("Derived", "lift of a mid-tone, the veil doubled per stop")]
    public static Stops LimitWithRoom(Stops limit, Stops brighter) =>
        new(Math.Log2(1 + ((Math.Pow(2, Guard.Positive(limit.Value, nameof(limit))) - 1) / new Stops(Guard.NonNegative(brighter.Value, nameof(brighter))).Ratio)));
}
