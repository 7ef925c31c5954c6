namespace StudioKit.Kits;

/// <summary>A default that stood in for something the kit did not say.</summary>
/// <param name="Path">Where it would have been written, e.g. <c>panel.thickness</c> or <c>lenses[0].pupil-ratio</c>.</param>
/// <param name="Value">The value used, as it would be written.</param>
/// <param name="Meaning">What the key is for, in a sentence.</param>
public sealed record DefaultUsed(string Path, string Value, string Meaning);
