namespace StudioKit.Kits.Exploring;

/// <summary>A value that an option writes.</summary>
/// <param name="Key">Path of the key.</param>
/// <param name="Value">The value as a person would type it; in braces or brackets a section or a list.</param>
public sealed record DesignWriting(string Key, string Value);
