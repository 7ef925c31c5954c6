namespace StudioKit.Physics.Structure;

/// <summary>What a structural check is about.</summary>
public enum StructuralCheckKind
{
    /// <summary>How far the panel sags under its own weight and the subject.</summary>
    PanelSag,

    /// <summary>Bending stress in the panel under the standing load.</summary>
    PanelStress,

    /// <summary>Bending stress in the panel while an elbow leans on it.</summary>
    PanelStressUnderElbow,

    /// <summary>Radius that the sheet is bent to cold.</summary>
    SweepBentCold,

    /// <summary>Room for the sheet's growth at its edges.</summary>
    SheetGrowth,

    /// <summary>How far the longest rail sags under the standing load.</summary>
    RailSag,

    /// <summary>Bending stress in the longest rail while an elbow leans on it.</summary>
    RailStress,

    /// <summary>Load at which a leg buckles.</summary>
    LegBuckling,

    /// <summary>How far the top leans in the gust.</summary>
    Sway,

    /// <summary>Pull on cords and pegs in the gust.</summary>
    Cords,

    /// <summary>Warmth of the pipe in the sun.</summary>
    PipeWarmth,

    /// <summary>Tipping over in the gust.</summary>
    Tipping,

    /// <summary>Sliding along the ground in the gust.</summary>
    Sliding,

    /// <summary>An upright sheet's stakes or feet tipping over in the gust.</summary>
    UprightTipping,

    /// <summary>An upright sheet's feet sliding along the ground in the gust.</summary>
    UprightSliding,

    /// <summary>Bending stress in the poles of an upright sheet in the gust.</summary>
    UprightPoles,

    /// <summary>Bending stress in an upright sheet in the gust.</summary>
    UprightSheet,

    /// <summary>Bending stress in a sheet that leans, for as long as it stands.</summary>
    UprightSheetLeaning,

    /// <summary>How near the gust brings an upright sheet to its subject.</summary>
    UprightReach,
}
