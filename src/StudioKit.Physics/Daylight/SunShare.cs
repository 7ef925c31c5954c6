using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Daylight;

/// <summary>How much of the light of a place comes from the sun itself, and what a shade leaves of it.</summary>
public static class SunShare
{
    /// <summary>What the sky alone is taken to give where neither date nor place are known: open shade on a clear day.</summary>
    [Source("AnsiExposureGuide", "open shade on a clear day")]
    public static ExposureValue OpenShade { get; } = new(12);

    /// <summary>Share of the sun in what is metered: what goes beyond the light of the sky.</summary>
    /// <param name="metered">Light metered in the open.</param>
    /// <param name="sky">Light of the sky alone on level ground; 0 lx or more.</param>
    /// <returns>1 − sky/metered [1]; 0 where the sky gives as much.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The sky's light is negative or not finite.</exception>
    [Source("Derived", "sun and sky add")]
    public static double Of(ExposureValue metered, Illuminance sky) =>
        Math.Max(0, 1 - (Guard.NonNegative(sky.Lux, nameof(sky)) / LightMeter.IlluminanceOf(metered).Lux));

    /// <summary>Light under a shade against that in the open.</summary>
    /// <param name="sunShare">Share of the sun in the open [1]; 0 to 1.</param>
    /// <param name="transmittance">Share of light that comes through the shade [1]; 0 to 1.</param>
    /// <param name="hidden">Share of the sky that it hides, by the cosine law [1]; 0 to 1.</param>
    /// <returns>s·τ + (1 − s)·(1 − F·(1 − τ)) [1]; 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A share is outside its range.</exception>
    /// <remarks>The shade stands in the sun's way; the sky is as bright everywhere, and nothing comes back from the ground or the shade's underside.</remarks>
    [Source("Howell", "configuration factor as the share of an even sky")]
    public static double Left(double sunShare, double transmittance, double hidden)
    {
        var (sun, through) = (Guard.Between(sunShare, 0, 1), Guard.Between(transmittance, 0, 1));
        return (sun * through) + ((1 - sun) * (1 - (Guard.Between(hidden, 0, 1) * (1 - through))));
    }
}
