namespace StudioKit.Kits.Subjects;

/// <summary>What a line of a handling guide is about; cards print the topics in this order.</summary>
public enum HandlingTopic
{
    /// <summary>Rules of the place, which come first.</summary>
    LocalRules,

    /// <summary>Permits to carry.</summary>
    Permits,

    /// <summary>Bites, stings and poison.</summary>
    Danger,

    /// <summary>When to stop and let it go.</summary>
    StopSigns,

    /// <summary>How long it is held.</summary>
    HoldTime,

    /// <summary>How it is held.</summary>
    Holding,

    /// <summary>Shade and moisture.</summary>
    ShadeAndMoisture,

    /// <summary>Warmth and wetness of the sheet.</summary>
    Sheet,

    /// <summary>Flashes and eyes.</summary>
    Light,

    /// <summary>What is never done.</summary>
    Never,

    /// <summary>What is underfoot.</summary>
    Ground,

    /// <summary>Letting it go.</summary>
    Release,

    /// <summary>Cleaning between animals and sites.</summary>
    Hygiene,
}
