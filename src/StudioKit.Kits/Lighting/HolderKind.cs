namespace StudioKit.Kits.Lighting;

/// <summary>What holds a flash where it stands.</summary>
public enum HolderKind
{
    /// <summary>A post on the ground, with a boom at its top where it has one.</summary>
    Stand,

    /// <summary>A long arm fastened to the frame, or to the camera where there is none.</summary>
    Arm,

    /// <summary>A short holder clamped to the frame, or to the camera where there is none.</summary>
    Clamp,

    /// <summary>The hand that does not hold the camera.</summary>
    Hand,

    /// <summary>The ground, with a foot or a plate under the flash.</summary>
    Ground,
}
