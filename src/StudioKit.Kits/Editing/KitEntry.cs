namespace StudioKit.Kits.Editing;

/// <summary>A key of a section with its value.</summary>
/// <param name="Key">The key.</param>
/// <param name="Value">Its value.</param>
public sealed record KitEntry(string Key, KitValue Value);
