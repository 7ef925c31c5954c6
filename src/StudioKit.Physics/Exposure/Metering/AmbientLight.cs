using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.Metering;

/// <summary>Available light in a picture taken with flash.</summary>
public static class AmbientLight
{
    /// <summary>Level of the ambient light against its metered exposure.</summary>
    /// <param name="scene">Brightness of the scene.</param>
    /// <param name="effective">Effective f-number N_e [1].</param>
    /// <param name="shutter">Exposure time t.</param>
    /// <param name="iso">Arithmetic speed S.</param>
    /// <returns>EV of the scene less EV of the settings at ISO 100; negative renders darker than metered.</returns>
    [Source("Iso2720", "exposure value of scene and settings")]
    public static Stops Level(ExposureValue scene, FNumber effective, ShutterSpeed shutter, IsoSpeed iso) =>
        new(scene.AtIso100 - LightMeter.OfSettings(effective, shutter, iso).AtIso100);

    /// <summary>Luminous exposure that the ambient light gives while the shutter stands open.</summary>
    /// <param name="scene">Brightness of the scene.</param>
    /// <param name="shutter">Exposure time t.</param>
    /// <returns>E·t [lx·s].</returns>
    [Source("Iso2720", "incident-light equation")]
    public static double LuminousExposure(ExposureValue scene, ShutterSpeed shutter) =>
        LightMeter.LuxOf(scene.AtIso100) * shutter.Seconds;
}
