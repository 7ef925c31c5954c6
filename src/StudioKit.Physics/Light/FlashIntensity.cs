using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>What a flash's guide number and modifier mean as luminous intensity times time.</summary>
public static class FlashIntensity
{
    /// <summary>Intensity·time on the axis of a bare head.</summary>
    /// <param name="guideNumber">Guide number at ISO 100 and full power.</param>
    /// <param name="power">Power set.</param>
    /// <param name="incidentConstant">Incident-light constant C that the guide number rests on [lx·s]; &gt; 0. 250 for a flat receptor.</param>
    /// <param name="outdoorLoss">Stops by which the number is too good outdoors, where no walls help; a positive loss.</param>
    /// <returns>I₀ = C·GN²/100·P·2^−loss [cd·s], GN in m.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The constant is not above zero.</exception>
    [Source("Derived", "Q_E = I/d² and Q_E = (C/100)·(GN/d)²·P from the incident-light equation of ISO 2720")]
    public static double OnAxis(
        GuideNumber guideNumber, FlashPower power, double incidentConstant = 250, Stops outdoorLoss = default)
    {
        var metres = Guard.Positive(guideNumber.AtIso100.Meters, nameof(guideNumber));
        return Guard.Positive(incidentConstant) * metres * metres / 100 * power.Fraction / outdoorLoss.Ratio;
    }

    /// <summary>Intensity·time on the axis after a dome, softbox or diffuser has spread the same flux over its own lobe.</summary>
    /// <param name="bareIntensityTime">I₀ of the bare head [cd·s]; ≥ 0.</param>
    /// <param name="bare">Beam of the bare head.</param>
    /// <param name="spread">Beam of the modifier.</param>
    /// <param name="transmittance">Share of the flux that comes out τ [1]; above 0, at most 1.</param>
    /// <returns>I₀·τ·(Φ/I₀ of the bare beam)/(Φ/I₀ of the spread one) [cd·s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "conservation of luminous flux between the two beams")]
    public static double ThroughModifier(double bareIntensityTime, LightLobe bare, LightLobe spread, double transmittance) =>
        Guard.NonNegative(bareIntensityTime) / ModifierLoss(bare, spread, transmittance).Ratio;

    /// <summary>Stops lost on the axis by a modifier, positive when it dims.</summary>
    /// <inheritdoc cref="ThroughModifier" path="/param[@name='bare' or @name='spread' or @name='transmittance']"/>
    /// <returns>log₂(Φ/I₀ spread / (τ·Φ/I₀ bare)) [1]; log₂((n + 1)/(2τ)) from cosⁿ to Lambertian.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The transmittance is outside its range.</exception>
    [Source("Derived", "conservation of luminous flux between the two beams")]
    public static Stops ModifierLoss(LightLobe bare, LightLobe spread, double transmittance)
    {
        ArgumentNullException.ThrowIfNull(bare);
        ArgumentNullException.ThrowIfNull(spread);
        Guard.Between(Guard.Positive(transmittance), 0, 1, nameof(transmittance));
        return Stops.FromRatio(spread.FluxOverAxialIntensity / (transmittance * bare.FluxOverAxialIntensity));
    }
}
