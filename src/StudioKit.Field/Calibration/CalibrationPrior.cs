using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration;

/// <summary>How far a kit's own figures may be wrong before anything is measured: standard uncertainties in stops.</summary>
public sealed record CalibrationPrior
{
    /// <summary>Of a flash's light: guide numbers are quoted with a maker's own allowances [1].</summary>
    [Source("CommonPractice", "guide numbers flatter by up to a stop")]
    public double FlashLight { get; init; } = 0.5;

    /// <summary>Of the panel's transmittance: sheets of the same name differ [1].</summary>
    [Source("CommonPractice", "opal acrylic varies by batch and thickness")]
    public double PanelTransmittance { get; init; } = 0.3;

    /// <summary>Of the camera's clip point: cameras keep 0.3 to 1 stop above the standard [1].</summary>
    [Source("CommonPractice", "headroom above ISO 12232 saturation")]
    public double CameraClipPoint { get; init; } = 0.5;

    internal double Of(CalibrationQuantity quantity) => quantity switch
    {
        CalibrationQuantity.FlashLight => FlashLight,
        CalibrationQuantity.PanelTransmittance => PanelTransmittance,
        _ => CameraClipPoint,
    };
}
