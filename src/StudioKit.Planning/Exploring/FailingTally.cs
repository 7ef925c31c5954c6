namespace StudioKit.Planning.Exploring;

/// <summary>How many designs fail a check.</summary>
/// <param name="Check">The check.</param>
/// <param name="Count">How many [1].</param>
public sealed record FailingTally(FailedCheck Check, int Count);
