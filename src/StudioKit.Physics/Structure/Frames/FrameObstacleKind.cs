namespace StudioKit.Physics.Structure.Frames;

/// <summary>Why a frame cannot even be drawn.</summary>
public enum FrameObstacleKind
{
    /// <summary>The panel is no wider than its two rails, which take the size given.</summary>
    NarrowPanel,

    /// <summary>The fittings would lie under the ground by the size given.</summary>
    FittingsUnderGround,

    /// <summary>More pipes would meet in one place than a fitting has sockets.</summary>
    CrowdedJoint,
}
