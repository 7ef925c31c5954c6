using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Standing;

/// <summary>How dark the shadow of one light is against what it lights, given the light that comes from elsewhere.</summary>
public static class ShadowDepth
{
    /// <summary>Lit against shaded.</summary>
    /// <param name="light">Luminous exposure by the light that casts the shadow [any unit]; ≥ 0.</param>
    /// <param name="rest">Luminous exposure by everything else, which is left in the shadow [the same unit]; &gt; 0.</param>
    /// <returns>log₂((E + R)/R) [stops]; ≥ 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An exposure is outside its range.</exception>
    [Source("Derived", "ratio of luminous exposures in factors of two; light adds linearly")]
    public static Stops Of(double light, double rest) => Stops.FromRatio(1 + (Guard.NonNegative(light) / Guard.Positive(rest)));

    /// <summary>Share of a wide glowing sheet's light that a surface over its middle gets by the way it faces.</summary>
    /// <param name="tilt">Angle of the surface's normal from straight down [rad]; 0 to π.</param>
    /// <returns>(1 + cos β)/2 [1]: all of it on the underside, half on a flank, none on the back.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The angle is outside its range.</exception>
    [Source("Howell", "element to an infinite plane that it is tilted against")]
    public static double ShareOfSheet(double tilt) => (1 + Math.Cos(Guard.Between(tilt, 0, Math.PI))) / 2;
}
