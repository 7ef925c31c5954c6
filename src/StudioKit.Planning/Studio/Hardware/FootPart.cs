namespace StudioKit.Planning.Studio.Hardware;

/// <summary>What lies along the screw of a foot.</summary>
public enum FootPart
{
    /// <summary>The nut in the cap, glued to its floor.</summary>
    GluedNut,

    /// <summary>The cap's floor with its hole.</summary>
    CapFloor,

    /// <summary>The washer under the cap.</summary>
    Washer,

    /// <summary>The nut that is drawn tight against the cap when the foot is set.</summary>
    LockNut,

    /// <summary>The screw's head.</summary>
    ScrewHead,

    /// <summary>The rubber tip over the head.</summary>
    RubberTip,
}
