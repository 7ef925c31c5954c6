namespace StudioKit.Planning;

/// <summary>A default that stood in for what the kit does not say.</summary>
/// <param name="Path">Where in the kit it would stand, e.g. <c>panel.transmittance</c>.</param>
/// <param name="Value">The value taken, with its unit.</param>
public sealed record PlanDefault(string Path, string Value);
