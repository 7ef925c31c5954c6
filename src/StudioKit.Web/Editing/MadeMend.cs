namespace StudioKit.Web.Editing;

/// <summary>A change that was made to mend a check, and what came of it.</summary>
/// <param name="Text">The kit's text with it.</param>
/// <param name="Label">What was done.</param>
/// <param name="Check">Name of the check.</param>
/// <param name="Passes">Whether the check passes now.</param>
/// <param name="Broken">Names of checks that fail now and did not before.</param>
public sealed record MadeMend(string Text, string Label, string Check, bool Passes, IReadOnlyList<string> Broken);
