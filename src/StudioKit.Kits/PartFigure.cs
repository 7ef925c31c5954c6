namespace StudioKit.Kits;

/// <summary>One figure of a part, as its file writes it.</summary>
/// <param name="Key">Key, with that of its section before it, e.g. <c>elbow.take-off</c>.</param>
/// <param name="Value">The value with its unit, e.g. <c>11 mm</c>.</param>
public sealed record PartFigure(string Key, string Value);
