namespace StudioKit.Kits.Forms;

/// <summary>One of the words that a field can be set to.</summary>
/// <param name="Word">The word as the kit writes it, e.g. <c>white-background</c>.</param>
/// <param name="Label">The same for people, e.g. <c>White background</c>.</param>
public sealed record FieldChoice(string Word, string Label);
