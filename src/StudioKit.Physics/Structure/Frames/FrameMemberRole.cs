namespace StudioKit.Physics.Structure.Frames;

/// <summary>What a pipe does in the frame.</summary>
public enum FrameMemberRole
{
    /// <summary>Top rail across the camera's view.</summary>
    CrossRail,

    /// <summary>Top rail along the camera's view.</summary>
    SideRail,

    /// <summary>Leg, or the part of a rear post under the side rail.</summary>
    Leg,

    /// <summary>Part of a rear post above the side rail.</summary>
    Upright,

    /// <summary>Rail at the top of the sweep.</summary>
    SweepRail,

    /// <summary>Lower stretcher.</summary>
    Stretcher,

    /// <summary>Rail that carries the flash.</summary>
    CradleRail,
}
