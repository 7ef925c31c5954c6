namespace StudioKit.Planning.Firing;

/// <summary>What to bear in mind of how one flash is fired.</summary>
/// <param name="Kind">What.</param>
/// <param name="Flash">Name of the flash.</param>
/// <param name="Trigger">What fires it.</param>
public sealed record TriggerCaveat(TriggerCaveatKind Kind, string Flash, string Trigger);
