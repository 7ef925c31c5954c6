namespace StudioKit.Planning.Session;

/// <summary>What is done in a step of a session.</summary>
public enum SessionStepKind
{
    /// <summary>Unpack and set up for the first time.</summary>
    SettingUp,

    /// <summary>Change to another set-up.</summary>
    Changing,

    /// <summary>Change lens or magnification.</summary>
    Reframing,

    /// <summary>Put up what shades and shelters, and take down what is no longer needed.</summary>
    Sheltering,

    /// <summary>Stand the upright sheet up behind the subject.</summary>
    StandingSheet,

    /// <summary>Set what fires the flashes: channel, groups, cords.</summary>
    SettingTriggers,

    /// <summary>Turn the polariser until the shine on a wet leaf goes.</summary>
    TurningPolariser,

    /// <summary>Photograph the test object.</summary>
    Testing,

    /// <summary>Fetch the animal and let it settle; from here on it is held.</summary>
    Settling,

    /// <summary>Photograph the subject.</summary>
    Shooting,

    /// <summary>Let it go.</summary>
    Releasing,
}
