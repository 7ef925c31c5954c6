namespace StudioKit.Wording;

/// <summary>How sentences are put on paper.</summary>
internal static class Sentence
{
    /// <summary>A text with a capital at its head; one that is empty stays so.</summary>
    public static string Begin(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
