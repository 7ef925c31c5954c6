namespace StudioKit.Planning.Studio.Uprights;

/// <summary>A step of taking an upright sheet down.</summary>
public enum UprightPackingStep
{
    /// <summary>The sheet is unclipped, wiped and wrapped.</summary>
    TakeSheet,

    /// <summary>Pegs are drawn and cords rolled up.</summary>
    UntieCords,

    /// <summary>Ballast comes off the feet.</summary>
    LiftBallast,

    /// <summary>The poles are unclipped from rail and bar.</summary>
    UnclipPoles,

    /// <summary>The bar is unclipped from the back legs.</summary>
    UnclipBar,

    /// <summary>The stakes are pulled and their holes closed.</summary>
    PullStakes,

    /// <summary>The poles come out of the feet, the feet apart.</summary>
    PartFeet,

    /// <summary>Poles of several pieces are taken apart.</summary>
    PartPoles,

    /// <summary>What came along is counted.</summary>
    CountParts,
}
