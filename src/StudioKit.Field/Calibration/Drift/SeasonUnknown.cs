namespace StudioKit.Field.Calibration.Drift;

/// <summary>What readings of a season depend on.</summary>
internal enum SeasonUnknown
{
    /// <summary>Light of a flash against its guide number.</summary>
    FlashLight,

    /// <summary>Loss of a dome, softbox or diffuser against the kit's figure.</summary>
    ModifierLoss,

    /// <summary>Transmittance of the sheet.</summary>
    PanelTransmittance,

    /// <summary>Where the camera clips.</summary>
    CameraClipPoint,

    /// <summary>The meter's own error, the same in all that it reads.</summary>
    Meter,

    /// <summary>The error of the camera's tone curve, the same in all pictures.</summary>
    Picture,

    /// <summary>What one outing differs from the others.</summary>
    Outing,
}
