namespace StudioKit.Planning;

/// <summary>The stages of a plan, in the order in which they follow from each other.</summary>
public enum PlanStage
{
    /// <summary>Lens combinations at their magnifications.</summary>
    Framings,

    /// <summary>The sheet that fills every frame.</summary>
    Panel,

    /// <summary>The pipe frame that carries it, what is cut and bought.</summary>
    Frame,

    /// <summary>Light on the panel from the flashes below.</summary>
    Light,

    /// <summary>Starting exposures, and what each framing sees of the lit panel.</summary>
    Exposures,

    /// <summary>What is carried, in which bag, by whom.</summary>
    Pack,

    /// <summary>The order of subjects and set-ups in the field.</summary>
    Session,

    /// <summary>Whether all of it holds.</summary>
    Checks,
}
