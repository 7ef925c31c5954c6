namespace StudioKit.Web.Results;

/// <summary>What came of a change.</summary>
/// <param name="Text">The changed text; as it was where the change was refused.</param>
/// <param name="Refusal">Why it was refused, with what would help; empty where it was made.</param>
public sealed record FormEditAnswer(string Text, string Refusal);
