namespace StudioKit.Physics.Exposure;

/// <summary>How far one click of a flash's power dial goes.</summary>
public enum PowerStep
{
    /// <summary>A third of a stop.</summary>
    Third,

    /// <summary>Half a stop.</summary>
    Half,

    /// <summary>A whole stop.</summary>
    Whole,
}
