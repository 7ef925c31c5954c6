using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Planning.Expected;

/// <summary>A kit's own figure after more or less light was measured than it promises.</summary>
public static class CorrectedFigure
{
    /// <summary>A guide number; light goes with its square.</summary>
    /// <param name="promised">The kit's guide number.</param>
    /// <param name="light">Light measured against what it promises, in stops [1].</param>
    /// <returns>GN·2^(s/2) at the same zoom.</returns>
    [Source("Iso1230", "guide number: light goes with its square")]
    public static GuideNumber Of(GuideNumber promised, Stops light) =>
        new(promised.AtIso100 * Math.Sqrt(light.Ratio), promised.Zoom);

    /// <summary>A transmittance; no sheet lets more light through than falls on it.</summary>
    /// <param name="promised">The kit's transmittance τ [1]; above 0, at most 1.</param>
    /// <param name="light">Light measured against what it promises, in stops [1].</param>
    /// <returns>τ·2^s [1], at most 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The transmittance is outside its range.</exception>
    [Source("Derived", "a ratio of light; at most all of it")]
    public static double Of(double promised, Stops light) => Math.Min(1, Guard.Between(promised, 0, 1) * light.Ratio);
}
