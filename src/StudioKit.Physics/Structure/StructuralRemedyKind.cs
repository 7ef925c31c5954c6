namespace StudioKit.Physics.Structure;

/// <summary>What to do about a structural check that fails, where a closed form says how much.</summary>
public enum StructuralRemedyKind
{
    /// <summary>A sweep of the radius given.</summary>
    WiderSweep,

    /// <summary>The room given at every edge of the sheet.</summary>
    MoreEdgeRoom,

    /// <summary>The ballast given under the middle or on the windward feet.</summary>
    BallastAgainstTipping,

    /// <summary>The ballast given under the middle.</summary>
    BallastAgainstSliding,
}
