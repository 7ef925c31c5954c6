using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using StudioKit.Physics.Sources;

namespace StudioKit.Planning.Expected;

/// <summary>What a flat incident-light meter showed, in stops against 1 lx·s: the scale on which it is held against what a plan expects.</summary>
public static class MeterReading
{
    /// <summary>Luminous exposure that a flash meter answered with an f-number.</summary>
    /// <param name="aperture">f-number N that the meter showed [1].</param>
    /// <param name="iso">ISO speed S that it was set to [1].</param>
    /// <returns>log₂(C·N²/S) stops against 1 lx·s [1].</returns>
    [Source("Iso2720", "incident-light equation, the light of a flash in place of illuminance times time")]
    public static double OfAperture(FNumber aperture, IsoSpeed iso) =>
        OfLuxSeconds(LightMeter.IncidentConstant * aperture.Value * aperture.Value / iso.Value);

    /// <summary>Luminous exposure that a meter answered with an exposure value, which counts as for one second.</summary>
    /// <param name="value">Exposure value EV at ISO 100 [1].</param>
    /// <returns>EV + log₂(C/100) stops against 1 lx·s [1].</returns>
    [Source("Iso2720", "incident-light equation at ISO 100")]
    public static double OfExposureValue(ExposureValue value) => OfLuxSeconds(LightMeter.IlluminanceOf(value).Lux);

    /// <summary>Luminous exposure as it stands.</summary>
    /// <param name="luxSeconds">Luminous exposure Q [lx·s]; &gt; 0.</param>
    /// <returns>log₂ Q stops against 1 lx·s [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The luminous exposure is not above zero, or not finite.</exception>
    [Source("Derived", "definition")]
    public static double OfLuxSeconds(double luxSeconds) => Math.Log2(Guard.Positive(luxSeconds));
}
