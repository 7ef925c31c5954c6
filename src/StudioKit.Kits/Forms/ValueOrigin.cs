namespace StudioKit.Kits.Forms;

/// <summary>Where a value that a plan goes by comes from.</summary>
public enum ValueOrigin
{
    /// <summary>There is none: nothing stands in, or it follows from other values.</summary>
    None,

    /// <summary>The kit says it.</summary>
    Written,

    /// <summary>A part that the kit names says it.</summary>
    Part,

    /// <summary>StudioKit takes it where nothing is said.</summary>
    Default,
}
