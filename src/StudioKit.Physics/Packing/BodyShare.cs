using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Packing;

/// <summary>Load as a share of the carrier's body mass.</summary>
public static class BodyShare
{
    /// <summary>Share up to which a load is comfortable for a day [1].</summary>
    public const double Comfortable = 0.20;

    /// <summary>Highest share for a fit carrier [1].</summary>
    public const double Demanding = 0.25;

    /// <summary>Share that nobody should carry more than [1].</summary>
    public const double Limit = 0.40;

    /// <summary>Share of body mass.</summary>
    /// <param name="load">Mass carried [kg]; ≥ 0.</param>
    /// <param name="body">Body mass [kg]; &gt; 0.</param>
    /// <returns>load/body [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Simpson2011", "loads of 0, 20, 30 and 40 % of body mass")]
    public static double Of(double load, double body) => Guard.NonNegative(load) / Guard.Positive(body);

    /// <summary>Band of a share.</summary>
    /// <param name="share">Share of body mass [1]; ≥ 0.</param>
    /// <returns>The band.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The share is outside its range, or not finite.</exception>
    /// <remarks>A fifth changes posture already; a quarter is common practice; two fifths is a review's upper limit. Less for novices and children.</remarks>
    [Source("Simpson2011", "posture at 20 % of body mass")]
    [Source("Genitrini2022", "not over 40 % of body mass")]
    public static LoadBand BandOf(double share) => Guard.NonNegative(share) switch
    {
        <= Comfortable => LoadBand.Comfortable,
        <= Demanding => LoadBand.Demanding,
        <= Limit => LoadBand.TooHeavy,
        _ => LoadBand.Refused,
    };
}
