using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Daylight;

/// <summary>Light of sun and sky on level ground against the sun's height, from full sun to the end of twilight.</summary>
/// <remarks>
/// A mean of clear days at sea level. Haze, height above the sea, snow and forest change it; a meter on the spot goes before it. The light of moon, stars and lamps is left out.
/// </remarks>
public static class DaylightIlluminance
{
    // Outside the air, and the radius of the earth over the height of an even atmosphere.
    private const double OutsideLux = 133775;
    private const double EarthRadius = 753.66156;

    private const double HazeFactor = 2;
    private const double AverageClouds = 3;
    private const double ThinClouds = 2;
    private const double DarkClouds = 10;

    /// <summary>Lowest sun for which there is an answer: the end of astronomical twilight.</summary>
    [Source("TwilightHko", "18 degrees below the horizon")]
    public static Angle Lowest { get; } = Angle.FromDegrees(-18);

    /// <summary>Light of the sun itself, and of the clear sky.</summary>
    /// <param name="seenHeight">Height h of the sun with refraction; -18° to 90°.</param>
    /// <returns>Sun and sky on level ground; the sun's is nought below the horizon.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is out of its range.</exception>
    /// <remarks>133 775 lx times e^(−0.21·m)·sin h for the sun and 0.0289·e^(−0.042·m)·(1 + (h + 90°)·sin h) for the sky, with the air mass m of an even atmosphere round the earth.</remarks>
    [Source("JaniczekDeYoung1987", "subroutine ATMOS, p. 22")]
    public static (Illuminance Sun, Illuminance Sky) Clear(Angle seenHeight)
    {
        var (sun, sky) = Shares(Guard.Between(seenHeight.Degrees, Lowest.Degrees, 90, nameof(seenHeight)) * Math.PI / 180);
        return (Illuminance.FromLux(OutsideLux * sun), Illuminance.FromLux(OutsideLux * sky));
    }

    /// <summary>Light that is to be expected.</summary>
    /// <param name="seenHeight">Height h of the sun with refraction; -18° to 90°.</param>
    /// <param name="state">What the light comes through.</param>
    /// <returns>The mean, and how dark and bright it may be.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is out of its range.</exception>
    /// <remarks>
    /// Sun and shade are twice or half the mean at times; the sun itself is never brighter than without air. Average clouds leave a third, thin ones a half, dark ones a tenth.
    /// </remarks>
    [Source("JaniczekDeYoung1987", "factors of sky condition: 2 thin, 3 average, 10 dark stratus clouds")]
    [Source("AitDaylight", "3.3: values at an instant may be twice or half as large as the model's")]
    public static ExpectedDaylight Expected(Angle seenHeight, SkyState state)
    {
        var (sun, sky) = Clear(seenHeight);
        var (direct, all) = (sun.Lux, sun.Lux + sky.Lux);
        var clearest = Math.Min(direct * HazeFactor, OutsideLux * Math.Max(0, Math.Sin(seenHeight.Radians)));
        return state switch
        {
            SkyState.Sun => Of(all, all / HazeFactor, clearest + (sky.Lux * HazeFactor)),
            SkyState.Cloud => Of(all / AverageClouds, all / DarkClouds, all / ThinClouds),
            _ => Of(sky.Lux, sky.Lux / HazeFactor, sky.Lux * HazeFactor),
        };
    }

    private static (double Sun, double Sky) Shares(double h)
    {
        var sine = Math.Sin(h);
        var refracted = Math.Sqrt(1 - Math.Pow(EarthRadius * Math.Cos(h) / (EarthRadius + 1), 2));
        var airMass = (EarthRadius * (refracted - sine)) + refracted;
        return (Math.Max(0, Math.Exp(-0.21 * airMass) * sine), 0.0289 * Math.Exp(-0.042 * airMass) * (1 + ((h + (Math.PI / 2)) * sine)));
    }

    private static ExpectedDaylight Of(double typical, double darkest, double brightest) => new(Reading(typical), Reading(darkest), Reading(brightest));

    private static Exposure.ExposureValue Reading(double lux) => LightMeter.FromIlluminance(Illuminance.FromLux(lux));
}
