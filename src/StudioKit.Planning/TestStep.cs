namespace StudioKit.Planning;

/// <summary>What to do, with a test object and before the animal comes out of its box, to see that a set-up works.</summary>
public enum TestStep
{
    /// <summary>Flash above off: the whole background must blink as overexposed.</summary>
    BackgroundAlone,

    /// <summary>The flash behind an upright sheet alone: the whole background must clip.</summary>
    BehindAlone,

    /// <summary>Of two sheets the flash below the panel alone: the panel must clip.</summary>
    PanelAlone,

    /// <summary>Of two sheets the flash behind the upright one alone: that must clip.</summary>
    UprightAlone,

    /// <summary>All flashes off: the frame must be nearly black.</summary>
    AmbientAlone,

    /// <summary>Flash off: the habitat must be right and the subject a little dark.</summary>
    HabitatAlone,

    /// <summary>Flash off: the scene must be as bright as it should look.</summary>
    SceneAlone,

    /// <summary>Flash on: the subject lifts, without a shadow of its own.</summary>
    FillOn,

    /// <summary>Key light alone.</summary>
    KeyAlone,

    /// <summary>Rim light alone.</summary>
    RimAlone,

    /// <summary>All flashes together.</summary>
    AllTogether,

    /// <summary>Each flash alone, by what fires it.</summary>
    EachFires,

    /// <summary>Look through the camera for stems between the subject, where it grows, and the sheet behind it, and bend them aside.</summary>
    LookThrough,

    /// <summary>Turn the polariser until the shine on a wet leaf goes.</summary>
    TurnPolariser,
}
