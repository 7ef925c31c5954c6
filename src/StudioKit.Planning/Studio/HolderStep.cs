namespace StudioKit.Planning.Studio;

/// <summary>A step of putting a holder together that is built of the frame's pipe.</summary>
public enum HolderStep
{
    /// <summary>The pieces of the pole are joined.</summary>
    JoinPole,

    /// <summary>The pieces of boom or arm are joined.</summary>
    JoinArm,

    /// <summary>The pole is pushed over a peg in the ground.</summary>
    StandOnPeg,

    /// <summary>The arm is clipped to the frame's rail.</summary>
    ClipToRail,

    /// <summary>The boom is put on the pole by a tee.</summary>
    TopWithBoom,

    /// <summary>The flash is fastened and tied.</summary>
    FastenFlash,
}
