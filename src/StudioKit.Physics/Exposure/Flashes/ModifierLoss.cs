using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>What a dome, softbox or diffuser costs on the axis of a flash.</summary>
public static class ModifierLoss
{
    /// <summary>Least loss of a dome or small softbox in common practice (no source).</summary>
    public static Stops UsualLeast { get; } = new(1);

    /// <summary>Greatest loss of a dome or small softbox in common practice (no source): small boxes with two diffusers lose about 3.</summary>
    public static Stops UsualMost { get; } = new(3);

    /// <summary>Loss on the axis when the bare beam's flux is spread into another lobe.</summary>
    /// <remarks>
    /// The same flux, less what the modifier keeps, fills the wider lobe: loss = log₂(Ω_modified/(T·Ω_bare)), Ω = Φ/I₀. For round
    /// beams spread to a
    /// Lambertian front this is log₂((n + 1)/(2·T)). Light that misses the modifier is not counted. A negative number is a gain.
    /// </remarks>
    /// <param name="bare">Lobe of the bare head.</param>
    /// <param name="modified">Lobe of the modifier's front.</param>
    /// <param name="transmittance">Share of the flux that leaves the modifier T [1]; above 0, at most 1.</param>
    /// <returns>Stops lost on the axis, counted positive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The transmittance is outside its range.</exception>
    [Source("Derived", "conservation of flux between two cosⁿ lobes")]
    public static Stops OnAxis(BeamLobe bare, BeamLobe modified, double transmittance) => OnAxis(bare.FluxPerAxialIntensity, modified.FluxPerAxialIntensity, transmittance);

    /// <summary>Loss on the axis when the bare beam's flux is spread into a lobe of any form.</summary>
    /// <param name="bareFluxOverAxial">Flux of the bare head's lobe over its intensity on the axis Ω [sr]; &gt; 0.</param>
    /// <param name="fluxOverAxial">Flux of the modifier's lobe over its intensity on the axis Ω [sr]; &gt; 0.</param>
    /// <param name="transmittance">Share of the flux that leaves the modifier T [1]; above 0, at most 1.</param>
    /// <returns>Stops lost on the axis, counted positive.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "conservation of flux between two lobes")]
    public static Stops OnAxis(double bareFluxOverAxial, double fluxOverAxial, double transmittance)
    {
        Guard.Between(Guard.Positive(transmittance), 0, 1);

        return Stops.FromRatio(Guard.Positive(fluxOverAxial) / (transmittance * Guard.Positive(bareFluxOverAxial)));
    }

    /// <summary>Whether a computed loss lies outside what practice finds for domes and small softboxes.</summary>
    /// <param name="loss">Computed loss, counted positive.</param>
    /// <returns>A sentence for the sheet; none where the loss is a usual one.</returns>
    [Source("CommonPractice", "domes lose 1 to 2 stops, small softboxes with two diffusers about 3")]
    public static string? Caveat(Stops loss) =>
        loss.Value >= UsualLeast.Value && loss.Value <= UsualMost.Value
            ? null
            : FormattableString.Invariant($"The modifier's loss computes to {loss} stops, outside the usual {UsualLeast.Value:0} to {UsualMost.Value:0}. Measure it: expose with and without it at one power and distance, and write the difference as its 'loss'.");
}
