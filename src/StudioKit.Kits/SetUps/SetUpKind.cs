namespace StudioKit.Kits.SetUps;

/// <summary>Ways of lighting.</summary>
public enum SetUpKind
{
    /// <summary>Subject on the panel, flash beneath burning it out to white, flash above.</summary>
    WhiteBackground,

    /// <summary>Habitat behind, exposed by daylight, flashes lifted to just under it.</summary>
    DaylightFill,

    /// <summary>Available light at dusk or in shade with flash as fill.</summary>
    LowLightFill,

    /// <summary>Background left black, key light and a rim light from behind.</summary>
    DarkBackground,
}
