namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Small parts that pipe, fittings and sheets are put up with.</summary>
public enum HardwareKind
{
    /// <summary>Pin through fitting and pipe of a joint that is pulled, with its cord.</summary>
    Pin,

    /// <summary>Foot of a leg: a screw with nuts, washer and rubber tip.</summary>
    Foot,

    /// <summary>Clip that holds the panel to a rail.</summary>
    PanelClip,

    /// <summary>Self-adhesive strip on a rail, which the panel rests on.</summary>
    PadStrip,

    /// <summary>Angle along a rail, which the panel rests on.</summary>
    LedgeStrip,

    /// <summary>Screw that holds a ledge to its rail.</summary>
    LedgeScrew,

    /// <summary>Clip that holds a skirt to a rail.</summary>
    SkirtClip,

    /// <summary>Peg in the ground.</summary>
    Peg,

    /// <summary>Cord from a top corner to a peg.</summary>
    GuyCord,

    /// <summary>Bag that is filled on site.</summary>
    BallastBag,

    /// <summary>Cord from a top corner to the bag under the middle.</summary>
    BallastCord,

    /// <summary>Clip that holds an upright sheet to a pole.</summary>
    SheetClip,

    /// <summary>Clip that holds a pipe to another that crosses it.</summary>
    PipeClip,

    /// <summary>Peg that fills a pole, which is pushed over it.</summary>
    PolePeg,

    /// <summary>Clamp that holds a flash in a socket of the frame.</summary>
    CradleClamp,

    /// <summary>Ball joint or clip that holds a flash at the end of a pipe.</summary>
    FlashJoint,

    /// <summary>Low stand of a flash under the panel that the frame does not carry.</summary>
    LowStand,

    /// <summary>Cord that catches a flash when its holder gives.</summary>
    SafetyCord,

    /// <summary>Adhesive tape on both faces for the flaps of what is folded.</summary>
    FlapTape,

    /// <summary>Elastic band that holds a folded softbox on the flash's head.</summary>
    HeadBand,

    /// <summary>Glue that keeps the nut in a foot's cap.</summary>
    NutGlue,

    /// <summary>Bright rag that marks a cord.</summary>
    CordRag,

    /// <summary>Soft cord that bends plants aside.</summary>
    PlantCord,

    /// <summary>Cloth on either face of the panel in the bag.</summary>
    PanelCloth,

    /// <summary>Soft cloth that the panel is wiped with.</summary>
    WipingCloth,
}
