namespace StudioKit.Kits.Cards;

/// <summary>What a side of a card can hold.</summary>
public enum CardBlock
{
    /// <summary>Name of the set-up and the card's number in its ring.</summary>
    SetUp,

    /// <summary>The framing, what goes on the camera, and the distance from glass to subject.</summary>
    Framing,

    /// <summary>Aperture, shutter and ISO in big numerals.</summary>
    Settings,

    /// <summary>Power and distance of each flash in big numerals.</summary>
    Flashes,

    /// <summary>The light that it is made for, how likely the first frame is right, and what it costs at the edge.</summary>
    MadeFor,

    /// <summary>What to do to see that the set-up works.</summary>
    Check,

    /// <summary>If this is seen, turn that.</summary>
    Remedies,

    /// <summary>The light budget of each flash.</summary>
    LightBudget,

    /// <summary>Depth of field and finest detail.</summary>
    Sharpness,

    /// <summary>Power changes to try first.</summary>
    Bracket,

    /// <summary>Where the lights about the subject stand, from above and from the side, and what holds them.</summary>
    LightPlaces,

    /// <summary>Other distances of each flash and the power that each asks for.</summary>
    DistancePowers,

    /// <summary>What to set when the light of the place changes.</summary>
    LightChanges,

    /// <summary>A rule at full size along the edge, wherever it stands in the list.</summary>
    Rule,

    /// <summary>Black, grey and white squares of 10 mm.</summary>
    Patches,

    /// <summary>A QR code that holds the settings as plain text.</summary>
    SettingsCode,
}
