using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Light;

/// <summary>What turns the panel's luminance into a place on the sensor's scale.</summary>
/// <param name="EffectiveFNumber">Effective f-number N_e.</param>
/// <param name="Iso">Speed set.</param>
/// <param name="ClipPoint">How far the camera's own clipping lies above ISO 12232 saturation.</param>
/// <param name="LensFactor">Lens factor q, image exposure over L·t/N_e² [1]; &gt; 0.</param>
/// <param name="FilterLoss">Stops taken by a filter before the lens.</param>
public sealed record CameraExposure(
    FNumber EffectiveFNumber, IsoSpeed Iso, Stops ClipPoint = default, double LensFactor = 0.65, Stops FilterLoss = default);
