
namespace StudioKit.Planning.Checks;

/// <summary>What a plan is checked for.</summary>
public enum PlanCheckKind
{
    /// <summary>A lens that reaches a magnification wanted of it; part: the lens.</summary>
    Magnification,

    /// <summary>Room between subject and front glass; part: the framing.</summary>
    RoomBeforeLens,

    /// <summary>A panel as large as the framings need.</summary>
    PanelSize,

    /// <summary>A flash below the panel that stands where it can light it.</summary>
    FlashBelow,

    /// <summary>Low camera angles over a flat panel.</summary>
    LowCameraAngles,

    /// <summary>An upright sheet as large as the framings need; part: the sheet.</summary>
    UprightSize,

    /// <summary>Views that see no ground under an upright sheet; part: the sheet.</summary>
    UprightGround,

    /// <summary>A flash behind an upright sheet that stands where it can light it; part: the sheet.</summary>
    FlashBehind,

    /// <summary>Camera angles behind which a panel reaches; parts: the framings, with their angle, behind which none does.</summary>
    CameraAngles,

    /// <summary>Room for rails and fittings.</summary>
    FrameRoom,

    /// <summary>A guide number for the zoom that a flash is used at; part: the flash.</summary>
    GuideNumberAtZoom,

    /// <summary>Lights about the subject that the lens does not hide from it.</summary>
    LensShadow,

    /// <summary>Lights about the subject, and what holds them, out of the picture.</summary>
    LightsOutOfPicture,

    /// <summary>Room for the heads of the lights about the subject, clear of lens, sheet, frame and ground.</summary>
    LightRoom,

    /// <summary>Holders that go where the lights stand.</summary>
    HolderReach,

    /// <summary>Light from above that leaves the sheet within the veil's limit, straight or mirrored.</summary>
    LightOnSheet,

    /// <summary>Every flash fired; part: the set-up.</summary>
    Triggers,

    /// <summary>An exposure for every framing; part: the set-up.</summary>
    Exposure,

    /// <summary>A feature that decides what a subject is, seen in one exposure at least; parts: the subject and the feature.</summary>
    Feature,

    /// <summary>A cover with room for its animals; parts: the cover and the set-up.</summary>
    CoverRoom,

    /// <summary>A cover whose foot stands on the flat sheet; parts: the cover and the set-up.</summary>
    CoverFoot,

    /// <summary>A clear view through a cover at every framing and camera angle; parts: the cover and the set-up.</summary>
    CoverView,

    /// <summary>A cover that daylight does not warm; parts: the cover and the set-up.</summary>
    CoverWarmth,

    /// <summary>A shade or wind-break as large as what it is for; parts: the shelter and the set-up.</summary>
    ShelterSize,

    /// <summary>A shade or wind-break that stands in the site's wind; parts: the shelter and the set-up.</summary>
    ShelterWind,

    /// <summary>Hands for camera, lights and shades; part: the set-up.</summary>
    Hands,

    /// <summary>Pipes that fill their sockets.</summary>
    FrameFit,

    /// <summary>A frame that carries a flash below; parts: the flash and the set-ups that light with it there.</summary>
    Cradle,

    /// <summary>Stock to cut every piece from.</summary>
    Stock,

    /// <summary>Sag of the panel under its own weight and the subject.</summary>
    PanelSag,

    /// <summary>Stress in the panel under the standing load.</summary>
    PanelStress,

    /// <summary>Stress in the panel while an elbow leans on it.</summary>
    PanelStressUnderElbow,

    /// <summary>Radius that the sheet is bent to cold.</summary>
    SweepBentCold,

    /// <summary>Room for the sheet's growth at its edges.</summary>
    SheetGrowth,

    /// <summary>Sag of the longest rail; parts: its pipes.</summary>
    RailSag,

    /// <summary>Stress in the longest rail while an elbow leans on it; parts: its pipes.</summary>
    RailStress,

    /// <summary>Load at which a leg buckles; parts: the pipes.</summary>
    LegBuckling,

    /// <summary>Lean of the top in the gust; parts: the pipes.</summary>
    Sway,

    /// <summary>Pull on cords and pegs in the gust.</summary>
    Cords,

    /// <summary>Warmth of the pipe in the sun.</summary>
    PipeWarmth,

    /// <summary>Tipping over in the gust.</summary>
    Tipping,

    /// <summary>Sliding along the ground in the gust.</summary>
    Sliding,

    /// <summary>Length of the frame's longest piece.</summary>
    LongestPiece,

    /// <summary>A long thing on its bag; parts: the thing and the bag.</summary>
    LongThing,

    /// <summary>A place for everything in or on a bag.</summary>
    Places,

    /// <summary>Mass in a bag; part: the bag.</summary>
    BagMass,

    /// <summary>Room in a bag; part: the bag.</summary>
    BagRoom,

    /// <summary>Mass on a person; part: the person.</summary>
    Burden,

    /// <summary>Mass that the kit asks for.</summary>
    TargetMass,

    /// <summary>Time that an animal is held; part: the subject.</summary>
    HoldTime,

    /// <summary>Cells for the session; part: the flash.</summary>
    Cells,

    /// <summary>Hours for the rounds of a block; parts: its set-ups.</summary>
    Hours,

    /// <summary>Time of the day for the rounds of a block, in its light and while its subjects are about; parts: its set-ups, then its subjects where others have a block of their own.</summary>
    DayTime,

    /// <summary>An upright sheet's stakes or feet tipping over in the gust; part: the upright sheet.</summary>
    UprightTipping,

    /// <summary>An upright sheet's feet sliding in the gust; part: the upright sheet.</summary>
    UprightSliding,

    /// <summary>Bending stress in an upright sheet's poles in the gust; part: the upright sheet.</summary>
    UprightPoles,

    /// <summary>Bending stress in an upright sheet in the gust; part: the upright sheet.</summary>
    UprightSheet,

    /// <summary>Bending stress in an upright sheet that leans; part: the upright sheet.</summary>
    UprightSheetLeaning,

    /// <summary>How near the gust brings an upright sheet to its subject; part: the upright sheet.</summary>
    UprightReach,
}
