namespace StudioKit.Planning.Exploring;

/// <summary>How many designs came to a verdict.</summary>
/// <param name="Verdict">The verdict.</param>
/// <param name="Count">How many [1].</param>
public sealed record DesignTally(DesignVerdict Verdict, int Count);
