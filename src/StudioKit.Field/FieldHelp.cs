namespace StudioKit.Field;

/// <summary>Where there is more to be had against a fault; each place says in its own words how.</summary>
public enum FieldHelp
{
    /// <summary>The hint says it all.</summary>
    None,

    /// <summary>The plan, which says why it has no light map.</summary>
    Plan,

    /// <summary>Where the power of each frame is given.</summary>
    Powers,
}
