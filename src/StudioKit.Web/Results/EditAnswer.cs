namespace StudioKit.Web.Results;

/// <summary>A kit's text with values written into it.</summary>
/// <param name="Text">The text with all of them; the text as it was where one was refused.</param>
/// <param name="Start">Where the text differs from what it was, in UTF-16 units from 0.</param>
/// <param name="Length">How much of the old text gave way, in UTF-16 units.</param>
/// <param name="NewText">What came in its place.</param>
/// <param name="Refusal">Why nothing was written, with what would help; empty where it was.</param>
public sealed record EditAnswer(string Text, int Start, int Length, string NewText, string Refusal);
