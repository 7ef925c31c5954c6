namespace StudioKit.Physics.Structure;

/// <summary>What a structural check takes for given.</summary>
public enum StructuralLoadKind
{
    /// <summary>Weight of the sheet between its supports.</summary>
    Sheet,

    /// <summary>Mass of the heaviest subject with its box.</summary>
    Subject,

    /// <summary>Push of an elbow.</summary>
    Elbow,

    /// <summary>Mass of all that stands, without ballast.</summary>
    Standing,

    /// <summary>Mass hung under the middle.</summary>
    Ballast,

    /// <summary>Speed of the gust.</summary>
    Gust,

    /// <summary>Pull that one peg holds.</summary>
    PegHold,

    /// <summary>Temperature of the air.</summary>
    Air,

    /// <summary>How much warmer than the air the sun makes sheet and pipes.</summary>
    SunWarming,

    /// <summary>Temperature at which the studio was built.</summary>
    Built,

    /// <summary>Level pull that one stake bears, 30 cm over the ground.</summary>
    StakeHold,

    /// <summary>Mass laid on the feet of an upright sheet.</summary>
    FeetBallast,
}
