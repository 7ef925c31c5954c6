using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Covers;

/// <summary>How soon a closed cover fogs over a wet animal, and how warm daylight makes it.</summary>
public static class CoverAir
{
    // Water vapour in air near 20 °C [m²/s].
    private const double Diffusivity = 2.5e-5;

    // Resistance of the air on either side of a wall [m²·K/W].
    private const double InnerResistance = 0.13;
    private const double OuterResistance = 0.04;

    // Sun and sky together, average conditions [lm/W].
    private const double DaylightEfficacy = 109;

    /// <summary>Time in which the air over a wet body comes half way to saturation.</summary>
    /// <param name="volume">Air under the cover; &gt; 0.</param>
    /// <param name="body">Length of the wet body, taken as a ball as thick; &gt; 0.</param>
    /// <returns>ln 2·V/(2π·d·D). Temperature and humidity fall out, as both the drive and what is lacking go with them.</returns>
    /// <remarks>Still air: movement of animal or air shortens it. A dry skin gives off a hundredth as much, so the time means nothing there.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("MaxwellEvaporation", "a wet ball in still air loses 2π·d·D·(ρs − ρ)")]
    public static Duration HalfSaturation(Volume volume, Length body) => Duration.FromSeconds(
        Math.Log(2) * Guard.Positive(volume.CubicMeters, nameof(volume)) / (2 * Math.PI * Guard.Positive(body.Meters, nameof(body)) * Diffusivity));

    /// <summary>Most by which daylight can warm the air under a closed cover.</summary>
    /// <param name="cover">The cover.</param>
    /// <param name="daylight">Daylight on it; ≥ 0.</param>
    /// <returns>E/K·A/(U·S): all light that falls on its foot turned to heat, which leaves by its walls through the air on both sides of them.</returns>
    /// <remarks>A bound, as the sheet throws most of the light out again.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("Iso6946", "surface resistances 0.13 and 0.04 m²·K/W")]
    [Source("Littlefair1988", "mean luminous efficacy of sun and sky, 109 lm/W")]
    public static TemperatureDelta Warming(CoverCase cover, Illuminance daylight)
    {
        ArgumentNullException.ThrowIfNull(cover);
        var (foot, walls) = Areas(cover);
        var heat = Guard.NonNegative(daylight.Lux, nameof(daylight)) / DaylightEfficacy * foot;
        return TemperatureDelta.FromKelvins(heat * (InnerResistance + OuterResistance) / walls);
    }

    /// <summary>Air under a cover.</summary>
    /// <param name="cover">The cover.</param>
    /// <returns>Its volume inside.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range.</exception>
    [Source("Derived", "box, cylinder, or cap of a sphere π·h·(3·a² + h²)/6")]
    public static Volume Inside(CoverCase cover)
    {
        ArgumentNullException.ThrowIfNull(cover);
        var (foot, high) = (Areas(cover).Foot, Guard.Positive(cover.Height.Meters, nameof(cover.Height)));
        var half = cover.Width.Meters / 2;
        return Volume.FromCubicMeters(cover.Shape == CoverShape.Dome ? Math.PI * high * ((3 * half * half) + (high * high)) / 6 : foot * high);
    }

    private static (double Foot, double Walls) Areas(CoverCase cover)
    {
        var (wide, deep, high) = (Guard.Positive(cover.Width.Meters, nameof(cover.Width)), Guard.Positive(cover.Depth.Meters, nameof(cover.Depth)), cover.Height.Meters);
        var disc = Math.PI * wide * wide / 4;
        return cover.Shape switch
        {
            CoverShape.RoundTub => (disc, disc + (Math.PI * wide * high)),
            CoverShape.Dome => (disc, disc + (Math.PI * high * high)),
            _ => (wide * deep, (wide * deep) + (2 * (wide + deep) * high)),
        };
    }
}
