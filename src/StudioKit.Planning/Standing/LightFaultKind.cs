namespace StudioKit.Planning.Standing;

/// <summary>What can be wrong with where a light about the subject stands.</summary>
public enum LightFaultKind
{
    /// <summary>The lens with its hood hides more of it from the subject than a click of the dial.</summary>
    BehindLens,

    /// <summary>Its head or modifier stands in the picture.</summary>
    InPicture,

    /// <summary>What holds it stands in the picture.</summary>
    HolderInPicture,

    /// <summary>Its head or modifier meets the lens.</summary>
    MeetsLens,

    /// <summary>Its head or modifier reaches through the sheet.</summary>
    MeetsSheet,

    /// <summary>Its head or modifier meets a pipe of the frame.</summary>
    MeetsFrame,

    /// <summary>Its head or modifier reaches into the ground.</summary>
    MeetsGround,

    /// <summary>Its holder does not reach so far.</summary>
    OutOfReach,

    /// <summary>Its holder does not go so low.</summary>
    TooLow,

    /// <summary>Its holder does not go so high.</summary>
    TooHigh,

    /// <summary>Its mirror image in the glossy sheet is seen and washes out what stands before it.</summary>
    Glare,

    /// <summary>Its light on the sheet, with that from below, washes out the subject.</summary>
    Brightens,
}
