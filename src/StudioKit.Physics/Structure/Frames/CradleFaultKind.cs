namespace StudioKit.Physics.Structure.Frames;

/// <summary>Why a frame does not carry a flash.</summary>
public enum CradleFaultKind
{
    /// <summary>The cradle would lie lower than a tee fits on a leg.</summary>
    TooLow,

    /// <summary>The cradle would lie higher than a tee fits on a leg.</summary>
    TooNearTopRails,

    /// <summary>The cradle would lie outside the legs, or too near them for its tees.</summary>
    OutsideLegs,

    /// <summary>The tees of two lower rails would meet, or a rail would cross a flash's head.</summary>
    TooNearAnotherRail,

    /// <summary>The head would not go between the legs.</summary>
    HeadOutsideLegs,

    /// <summary>The body would not lie between the legs, whichever way round.</summary>
    BodyOutsideLegs,

    /// <summary>The body is higher than the window is to stand over the ground.</summary>
    BodyInGround,

    /// <summary>The heads of two flashes that are up at once would meet.</summary>
    HeadMeetsAnother,

    /// <summary>The frame lies so low that it has no rails for a flash.</summary>
    LowFrame,

    /// <summary>The window would lie under the ground.</summary>
    UnderGround,
}
