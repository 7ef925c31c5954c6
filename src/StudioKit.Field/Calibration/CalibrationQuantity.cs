namespace StudioKit.Field.Calibration;

/// <summary>What a calibration corrects.</summary>
public enum CalibrationQuantity
{
    /// <summary>Light of one flash against what its guide number promises.</summary>
    FlashLight,

    /// <summary>Transmittance of the panel.</summary>
    PanelTransmittance,

    /// <summary>Where the camera clips, above saturation after ISO 12232.</summary>
    CameraClipPoint,
}
