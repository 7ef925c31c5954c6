using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>What a dome, softbox or diffuser makes of a flash's beam, whatever the shapes of the two beams.</summary>
public static class ModifiedFlash
{
    /// <summary>Intensity·time on the axis after the same flux, less what the modifier keeps, has been spread over its own beam.</summary>
    /// <param name="bareIntensityTime">I₀ of the bare head [cd·s]; ≥ 0.</param>
    /// <param name="bare">Beam of the bare head.</param>
    /// <param name="spread">Beam of the modifier.</param>
    /// <param name="transmittance">Share of the flux that comes out τ [1]; above 0, at most 1.</param>
    /// <returns>I₀·τ·Ω_bare/Ω_spread [cd·s], Ω = Φ/I₀.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "conservation of luminous flux between the two beams")]
    public static double AxialIntensityTime(double bareIntensityTime, LightLobe bare, LightLobe spread, double transmittance)
    {
        ArgumentNullException.ThrowIfNull(bare);
        ArgumentNullException.ThrowIfNull(spread);
        Guard.Between(Guard.Positive(transmittance), 0, 1);
        return Guard.NonNegative(bareIntensityTime) * transmittance * bare.FluxOverAxialIntensity / spread.FluxOverAxialIntensity;
    }
}
