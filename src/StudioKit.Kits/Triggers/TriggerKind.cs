namespace StudioKit.Kits.Triggers;

/// <summary>How a flash is fired.</summary>
public enum TriggerKind
{
    /// <summary>Radio on the camera that fires receivers.</summary>
    RadioSender,

    /// <summary>Radio at a flash that a sender fires.</summary>
    RadioReceiver,

    /// <summary>Cord from the camera to a flash.</summary>
    Cord,

    /// <summary>Optical cell at a flash, which fires along with any flash that it sees.</summary>
    OpticalCell,

    /// <summary>A hand on the flash's own button while the shutter stands open; nothing is carried.</summary>
    Hand,
}
