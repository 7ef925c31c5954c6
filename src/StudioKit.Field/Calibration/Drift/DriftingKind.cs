namespace StudioKit.Field.Calibration.Drift;

/// <summary>What may drift from outing to outing.</summary>
public enum DriftingKind
{
    /// <summary>Light of one flash.</summary>
    FlashLight,

    /// <summary>Transmittance of the panel.</summary>
    PanelTransmittance,

    /// <summary>Where the camera clips.</summary>
    CameraClipPoint,

    /// <summary>All three together: the white margin over one flash.</summary>
    WhiteMargin,
}
