using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Metering;

/// <summary>What a light meter calibrated to ISO 2720 says: light, exposure value and settings, each from the others.</summary>
/// <remarks>
/// Reflected light N²/t = L·S/K, incident light on a flat receptor N²/t = E·S/C. A dome receptor has C of 320 to 340, so its
/// reading in lux
/// must not be used with the constant here. For close-ups N is the effective f-number.
/// </remarks>
public static class LightMeter
{
    /// <summary>Reflected-light constant K [cd·s/m²]; the standard allows 10.6 to 13.4.</summary>
    [Source("Iso2720", "reflected-light constant K, range 10.6 to 13.4; 12.5 in common use")]
    public const double ReflectedConstant = 12.5;

    /// <summary>Incident-light constant C of a flat, cosine-corrected receptor [lx·s]; the standard allows 240 to 400.</summary>
    [Source("Iso2720", "incident-light constant C, flat receptor, range 240 to 400; 250 in common use")]
    public const double IncidentConstant = 250;

    /// <summary>Exposure value that a scene luminance asks for.</summary>
    /// <param name="luminance">Luminance L; &gt; 0 cd/m².</param>
    /// <returns>log₂(100·L/K) at ISO 100 [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The luminance is not above zero.</exception>
    [Source("Iso2720", "reflected-light equation at ISO 100")]
    public static ExposureValue FromLuminance(Luminance luminance) =>
        new(Math.Log2(100 * Guard.Positive(luminance.CandelasPerSquareMeter, nameof(luminance)) / ReflectedConstant));

    /// <summary>Exposure value that an illuminance on the subject asks for.</summary>
    /// <param name="illuminance">Illuminance E on a flat receptor; &gt; 0 lx.</param>
    /// <returns>log₂(100·E/C) at ISO 100 [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The illuminance is not above zero.</exception>
    [Source("Iso2720", "incident-light equation at ISO 100")]
    public static ExposureValue FromIlluminance(Illuminance illuminance) =>
        new(Math.Log2(100 * Guard.Positive(illuminance.Lux, nameof(illuminance)) / IncidentConstant));

    /// <summary>Mean scene luminance that a reflected-light meter read.</summary>
    /// <returns>K/100·2^EV [cd/m²].</returns>
    [Source("Iso2720", "reflected-light equation at ISO 100")]
    public static Luminance LuminanceOf(ExposureValue scene) =>
        Luminance.FromCandelasPerSquareMeter(ReflectedConstant / 100 * Math.Pow(2, scene.AtIso100));

    /// <summary>Illuminance on the subject that an incident-light meter read.</summary>
    /// <returns>C/100·2^EV [lx].</returns>
    [Source("Iso2720", "incident-light equation at ISO 100")]
    public static Illuminance IlluminanceOf(ExposureValue scene) => Illuminance.FromLux(LuxOf(scene.AtIso100));

    /// <summary>Shutter speed that a meter names for a scene.</summary>
    /// <param name="scene">Light of the scene.</param>
    /// <param name="aperture">f-number N that the meter is set to.</param>
    /// <param name="iso">Speed S that it is set to.</param>
    /// <returns>t = N²/(2^EV·S/100).</returns>
    [Source("Iso2720", "EV = log₂(N²/t) at ISO 100, turned round")]
    public static ShutterSpeed ShutterFor(ExposureValue scene, FNumber aperture, IsoSpeed iso) =>
        new(aperture.Value * aperture.Value / (Math.Pow(2, scene.AtIso100) * iso.Value / 100));

    /// <summary>Brightness of the scene that the camera's settings expose correctly.</summary>
    /// <param name="effective">Effective f-number N_e [1].</param>
    /// <param name="shutter">Exposure time t.</param>
    /// <param name="iso">Arithmetic speed S.</param>
    /// <returns>log₂(N_e²/t·100/S) [1].</returns>
    [Source("Iso2720", "exposure value of settings, brought to ISO 100")]
    public static ExposureValue OfSettings(FNumber effective, ShutterSpeed shutter, IsoSpeed iso) =>
        new((2 * Math.Log2(effective.Value)) - Math.Log2(shutter.Seconds) - Math.Log2(iso.Value / 100));

    internal static double LuxOf(double exposureValue) => IncidentConstant / 100 * Math.Pow(2, exposureValue);
}
