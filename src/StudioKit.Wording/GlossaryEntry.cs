namespace StudioKit.Wording;

/// <summary>A word of the trade, as StudioKit uses it.</summary>
/// <param name="Term">The word.</param>
/// <param name="Meaning">What it means here.</param>
public sealed record GlossaryEntry(string Term, string Meaning);
