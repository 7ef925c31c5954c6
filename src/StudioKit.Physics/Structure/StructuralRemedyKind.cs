namespace StudioKit.Physics.Structure;

/// <summary>What to do about a structural check that fails.</summary>
public enum StructuralRemedyKind
{
    /// <summary>A sheet of the thickness given, or a rail under its middle.</summary>
    SheetOfThickness,

    /// <summary>A thicker sheet, or a rail under its middle.</summary>
    ThickerSheet,

    /// <summary>A sweep of the radius given, a thinner sheet, or one bent hot.</summary>
    WiderSweep,

    /// <summary>The room given at every edge of the sheet.</summary>
    MoreEdgeRoom,

    /// <summary>A larger pipe, or a leg under the rail's middle.</summary>
    LargerPipeOrLeg,

    /// <summary>A larger pipe, and no elbows on it.</summary>
    LargerPipeAndNoElbows,

    /// <summary>Stretchers, shorter legs, a larger pipe, pinned joints or guys.</summary>
    StifferLegs,

    /// <summary>Pinned joints, stretchers or guys.</summary>
    StifferJoints,

    /// <summary>More pegs, or pegs that hold more.</summary>
    MorePegs,

    /// <summary>Shade, or a pipe that the sun does not soften.</summary>
    Shade,

    /// <summary>The ballast given under the middle or on the windward feet, or pegs.</summary>
    BallastAgainstTipping,

    /// <summary>The ballast given under the middle, or pegs.</summary>
    BallastAgainstSliding,
}
