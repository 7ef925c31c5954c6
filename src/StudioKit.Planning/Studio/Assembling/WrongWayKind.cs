namespace StudioKit.Planning.Studio.Assembling;

/// <summary>Mistakes that steps invite.</summary>
public enum WrongWayKind
{
    /// <summary>A fitting that one pipe holds is turned about that pipe, so that its free sockets point elsewhere.</summary>
    Turned,

    /// <summary>Feet are screwed out further than the ground asks.</summary>
    FootLong,

    /// <summary>The panel's glossy side is up.</summary>
    GlossUp,
}
