namespace StudioKit.Planning.Firing;

/// <summary>What stands in the way of a flash being fired as a kit has it.</summary>
public enum TriggerFaultKind
{
    /// <summary>Nothing fires it.</summary>
    NotFired,

    /// <summary>The radio on the camera fires others and is none at a flash.</summary>
    SenderAtFlash,

    /// <summary>No radio on the camera fires its receiver.</summary>
    NoSender,

    /// <summary>What fires it needs the camera's hot shoe, which something else has.</summary>
    ShoeTaken,

    /// <summary>What fires it is at another flash at the same time.</summary>
    UsedTwice,

    /// <summary>What fires it is built into another flash.</summary>
    InOtherFlash,

    /// <summary>Its receiver is set to another channel than the sender.</summary>
    OtherChannel,

    /// <summary>Its radio does not know its group.</summary>
    UnknownGroup,

    /// <summary>Its group has a flash at another power, and the sender sets one for both.</summary>
    SharesGroup,

    /// <summary>It stands further off than what fires it reaches.</summary>
    OutOfRange,

    /// <summary>No other flash goes off that its cell would see.</summary>
    NothingToSee,

    /// <summary>The shutter does not stand open for as long as a hand takes.</summary>
    ShutterTooShort,
}
