namespace StudioKit.Planning.Studio.Hardware;

/// <summary>Tools that a studio is built and put up with.</summary>
public enum ToolKind
{
    /// <summary>Fine saw or pipe cutter.</summary>
    Saw,

    /// <summary>Clamp or vice.</summary>
    Vice,

    /// <summary>File for burrs.</summary>
    File,

    /// <summary>Steel rule or tape.</summary>
    Rule,

    /// <summary>Pencil and waterproof pen.</summary>
    Pen,

    /// <summary>Goggles.</summary>
    Goggles,

    /// <summary>Gloves.</summary>
    Gloves,

    /// <summary>Drill.</summary>
    Drill,

    /// <summary>Drill bit of a size.</summary>
    DrillBit,

    /// <summary>Screwdriver.</summary>
    Screwdriver,

    /// <summary>Scoring knife or fine blade for sheet.</summary>
    SheetKnife,

    /// <summary>Scissors.</summary>
    Scissors,

    /// <summary>Needle and strong thread.</summary>
    Needle,

    /// <summary>Spanner of a size.</summary>
    Spanner,

    /// <summary>Spirit level.</summary>
    Level,

    /// <summary>Spring balance to a load.</summary>
    SpringBalance,
}
