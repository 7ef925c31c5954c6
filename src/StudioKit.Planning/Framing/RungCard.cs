namespace StudioKit.Planning.Framing;

/// <summary>The card of one framing in one set-up.</summary>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Framing">Name of the framing.</param>
public sealed record RungCard(string SetUp, string Framing);
