namespace StudioKit.Kits.SetUps;

/// <summary>What a flash does in a set-up.</summary>
public enum LightRole
{
    /// <summary>Under the panel, burning it out to white.</summary>
    Below,

    /// <summary>Above, modelling the subject on the panel.</summary>
    Above,

    /// <summary>Main light on the subject.</summary>
    Key,

    /// <summary>Lifts the shadows under available light.</summary>
    Fill,

    /// <summary>From behind, drawing the outline.</summary>
    Rim,

    /// <summary>Behind an upright sheet, burning it out to white.</summary>
    Behind,
}
