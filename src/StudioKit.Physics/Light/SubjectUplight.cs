using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>Light that the glowing panel throws up on the underside of the subject.</summary>
public static class SubjectUplight
{
    /// <summary>Luminous exposure over the middle of a rectangular panel.</summary>
    /// <param name="luminanceTime">Luminance times time of the panel Q_L [cd·s/m²]; ≥ 0.</param>
    /// <param name="width">One side of the panel [m]; &gt; 0.</param>
    /// <param name="depth">The other side [m]; &gt; 0.</param>
    /// <param name="height">Underside of the subject over the sheet [m]; &gt; 0.</param>
    /// <returns>π·Q_L·F [lx·s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Howell", "configuration B-3, four corner rectangles")]
    public static double FromRectangle(double luminanceTime, double width, double depth, double height) =>
        Math.PI * Guard.NonNegative(luminanceTime) * FormFactor.PointToRectangle(width, depth, height);

    /// <summary>The panel's light from below against the key light from above.</summary>
    /// <param name="uplight">Luminous exposure from below [lx·s]; &gt; 0.</param>
    /// <param name="key">Luminous exposure from the key light [lx·s]; &gt; 0.</param>
    /// <returns>log₂(uplight/key) [stops]; negative where the key is stronger.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An exposure is not above zero.</exception>
    [Source("Derived", "ratio of two luminous exposures in factors of two")]
    public static Stops AgainstKey(double uplight, double key) =>
        Stops.FromRatio(Guard.Positive(uplight) / Guard.Positive(key));
}
