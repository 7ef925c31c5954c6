namespace StudioKit.Field.Calibration;

/// <summary>What a reading was taken of, which decides what it depends on.</summary>
public enum CalibrationReadingKind
{
    /// <summary>An incident-light meter in a flash's beam: that flash's light alone.</summary>
    FlashMeter,

    /// <summary>An incident-light meter face down on the panel: the flash beneath and the panel.</summary>
    PanelMeter,

    /// <summary>White margin of the bare panel, from a test frame or a ladder: the flash beneath, the panel and the camera.</summary>
    WhiteMargin,

    /// <summary>Light of a card of known reflectance in a frame, in stops above clipping: a flash above and the camera.</summary>
    CardInFrame,
}
