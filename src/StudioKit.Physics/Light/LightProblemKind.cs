namespace StudioKit.Physics.Light;

/// <summary>What can be wrong with the geometry of a studio.</summary>
public enum LightProblemKind
{
    /// <summary>A length, width or diameter is zero, negative or not a number.</summary>
    NoExtent,

    /// <summary>A transmittance, reflectance or exponent is outside its range.</summary>
    OutOfRange,

    /// <summary>The arc at the back is longer than the sheet, or bends past a quarter turn.</summary>
    ImpossibleSweep,

    /// <summary>There is no flash under the panel.</summary>
    NoFlash,

    /// <summary>A flash stands level with the sheet or above it.</summary>
    AboveSheet,

    /// <summary>A flash reaches into the ground.</summary>
    InsideFloor,

    /// <summary>A flash reaches through a skirt.</summary>
    OutsideSkirts,

    /// <summary>A flash throws no light straight at the panel.</summary>
    AimedAway,

    /// <summary>The subject does not stand on the flat part of the panel.</summary>
    SubjectOffPanel,

    /// <summary>The camera stands under the panel or looks up.</summary>
    CameraBelowPanel,
}
