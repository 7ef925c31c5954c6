namespace StudioKit.Planning.Studio.Uprights;

/// <summary>A step of putting an upright sheet up.</summary>
public enum UprightStep
{
    /// <summary>Poles of several pieces are joined.</summary>
    JoinPoles,

    /// <summary>The clips' places are marked on poles and sheet.</summary>
    MarkClips,

    /// <summary>The place is looked over: what grows, lives and lies there.</summary>
    LookOver,

    /// <summary>Two stakes are driven.</summary>
    DriveStakes,

    /// <summary>A stake is pulled as a test.</summary>
    PullStake,

    /// <summary>The feet are put together and stand with their poles.</summary>
    StandFeet,

    /// <summary>Ballast is laid on the feet.</summary>
    LayBallast,

    /// <summary>The bar is clipped across the back legs.</summary>
    ClipBar,

    /// <summary>The poles are clipped to bar and back rail.</summary>
    ClipPoles,

    /// <summary>The sheet is set on its lower clips and clipped to the poles.</summary>
    HangSheet,

    /// <summary>Cords are tied and pegged.</summary>
    TieCords,

    /// <summary>What must be so before the flash is fired.</summary>
    CheckOver,
}
