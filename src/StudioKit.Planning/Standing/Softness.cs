namespace StudioKit.Planning.Standing;

/// <summary>How soft a light is, by how large it looks from the subject (common practice, no source).</summary>
public enum Softness
{
    /// <summary>Under 6° across: sharp shadows, small bright reflections.</summary>
    Hard,

    /// <summary>6° to 12°.</summary>
    FairlyHard,

    /// <summary>12° to 30°: shadows with wide edges.</summary>
    Soft,

    /// <summary>30° and more: shadows without edges.</summary>
    VerySoft,
}
