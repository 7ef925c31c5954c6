namespace StudioKit.Web.Results;

/// <summary>A step of a search for a change that mends a check.</summary>
/// <param name="Check">The check.</param>
/// <param name="IsDone">Whether the search is over.</param>
/// <param name="Label">What to do, with values and units; empty where nothing was found, or not yet.</param>
/// <param name="Note">What else comes of it; empty where nothing does.</param>
/// <param name="Text">The kit's text with the change.</param>
public sealed record MendAnswer(string Check, bool IsDone, string Label, string Note, string Text);
