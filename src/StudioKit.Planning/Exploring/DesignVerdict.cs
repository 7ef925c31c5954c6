namespace StudioKit.Planning.Exploring;

/// <summary>What becomes of a design that was tried.</summary>
public enum DesignVerdict
{
    /// <summary>It stands, and keeps every limit.</summary>
    Good,

    /// <summary>Its options do not go together: the kit cannot be read.</summary>
    CannotBe,

    /// <summary>Its plan fails a check.</summary>
    Fails,

    /// <summary>Its plan has no figure for one of the measures.</summary>
    Unmeasured,

    /// <summary>It stands, and is beyond a limit.</summary>
    BeyondLimit,
}
