namespace StudioKit.Planning.Checks;

/// <summary>What to do about a check that fails.</summary>
public enum CheckRemedyKind
{
    /// <summary>A lower magnification, a shorter tube or a longer lens.</summary>
    LowerMagnification,

    /// <summary>The magnification given or more; parts: the lens and the set-up.</summary>
    ShowLarger,

    /// <summary>A panel of at least the amount given, or without the framings named.</summary>
    LargerPanel,

    /// <summary>A cover of at least the side and height given inside; part: the cover.</summary>
    LargerCover,

    /// <summary>A panel of at least the amount given, or a smaller cover; part: the cover.</summary>
    PanelUnderCover,

    /// <summary>A camera angle within those given; part: the set-up.</summary>
    ClearAngle,

    /// <summary>The cover lifted for the picture; part: the cover.</summary>
    LiftCover,

    /// <summary>A tank of another size, or another framing; part: the tank.</summary>
    OtherTank,

    /// <summary>Shade of the amount given over the cover; part: the set-up.</summary>
    ShadeCover,

    /// <summary>The flash below nearer the panel by the amount given, or a frame higher by as much; part: the flash.</summary>
    FlashNearerPanel,

    /// <summary>The flash below further from the panel by the amount given; part: the flash.</summary>
    FlashFurtherFromPanel,

    /// <summary>The flash below nearer the panel's middle by the amount given; part: the flash.</summary>
    FlashNearerMiddle,

    /// <summary>The flash below aimed at the panel; part: the flash.</summary>
    AimAtPanel,

    /// <summary>A camera that looks down as steeply as the amount given, or an upright sheet behind the subject.</summary>
    SteeperCamera,

    /// <summary>A sheet swept up behind the subject, an upright sheet there, or a camera that looks down as steeply as the amount given.</summary>
    SweptTable,

    /// <summary>An upright sheet of the amount given; part: the sheet.</summary>
    LargerUpright,

    /// <summary>A camera that looks more level, an upright sheet nearer, or one that reaches the ground; part: the sheet.</summary>
    LevelCamera,

    /// <summary>The flash behind an upright sheet raised by the amount given; part: the flash.</summary>
    RaiseFlashBehind,

    /// <summary>Another height of the frame, or size of the panel.</summary>
    OtherFrameSize,

    /// <summary>A panel larger than the amount given, or a thinner pipe.</summary>
    WiderThanRails,

    /// <summary>A frame higher by the amount given, or a low frame.</summary>
    RaiseFrame,

    /// <summary>A pack that takes pieces of the amount given.</summary>
    LongerPieces,

    /// <summary>Another place of the flash below, or another size of the panel.</summary>
    ClearJoint,

    /// <summary>Any one of the moves given, or a stand of its own.</summary>
    MoveFlash,

    /// <summary>A stand of its own for the flash.</summary>
    OwnStand,

    /// <summary>A guide number of the flash named for the zoom given, listed or measured.</summary>
    MeasureGuideNumber,

    /// <summary>Longer stock, or more of it.</summary>
    MoreStock,

    /// <summary>Couplings in the longest pieces.</summary>
    Coupling,

    /// <summary>A longer bag, a coupling, or a smaller panel.</summary>
    LongerBag,

    /// <summary>Less in a bag that no sharing out makes lighter.</summary>
    LighterBag,

    /// <summary>A bag that holds more.</summary>
    LargerBag,

    /// <summary>More people, or less to carry.</summary>
    ShareLoad,

    /// <summary>The things named stay at home, which loses so many set-ups at framings.</summary>
    LeaveAtHome,

    /// <summary>There is nothing that can stay at home.</summary>
    NothingToLeave,

    /// <summary>Fewer frames or set-ups of an animal.</summary>
    HoldShorter,

    /// <summary>Fewer rounds, or longer hours.</summary>
    FewerRounds,

    /// <summary>Other hours by the clock: the times given have the light.</summary>
    OtherHours,

    /// <summary>Other subjects, or the same when they are not about: the times given have the light.</summary>
    OtherSubjects,

    /// <summary>Another window of light, date or place: the light given is all that is expected.</summary>
    OtherLight,

    /// <summary>So many more sets of cells.</summary>
    MoreCells,

    /// <summary>Strips under all four edges of the panel.</summary>
    RestOnAllEdges,

    /// <summary>A sheet of the thickness given.</summary>
    SheetOfThickness,

    /// <summary>A sweep of the radius given.</summary>
    WiderSweep,

    /// <summary>The room given at every edge of the sheet.</summary>
    MoreEdgeRoom,

    /// <summary>The pipe named, with fittings that take it.</summary>
    OtherPipe,

    /// <summary>Stretchers between the legs.</summary>
    Stretchers,

    /// <summary>Cords from the top corners to so many pegs.</summary>
    Guys,

    /// <summary>So many pegs in all.</summary>
    MorePegs,

    /// <summary>Shade over frame and sheet.</summary>
    Shade,

    /// <summary>Elbows that push no more than the amount given.</summary>
    LighterElbow,

    /// <summary>The ballast given under the middle or on the windward feet.</summary>
    BallastAgainstTipping,

    /// <summary>The ballast given under the middle.</summary>
    BallastAgainstSliding,

    /// <summary>The light from the direction given; parts: the flash and the set-up.</summary>
    LightFromElsewhere,

    /// <summary>Another holder, or a hand; parts: the flash, the set-up and the holder.</summary>
    OtherHolder,

    /// <summary>A shade or wind-break of at least the two sides given; part: the shelter.</summary>
    LargerShelter,

    /// <summary>A shade or wind-break left folded in such wind; part: the shelter.</summary>
    LeaveFolded,

    /// <summary>So many more hands, or something that holds in their place.</summary>
    MoreHands,

    /// <summary>A smaller panel or a lower frame, as nothing else that was tried would do alone.</summary>
    SmallerStudio,

    /// <summary>An upright sheet held otherwise, as the change given has it.</summary>
    StandOtherwise,

    /// <summary>An upright sheet kept out of wind over the mean given, as nothing that was tried holds it.</summary>
    OutOfWind,
}
