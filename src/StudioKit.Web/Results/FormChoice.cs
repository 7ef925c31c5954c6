namespace StudioKit.Web.Results;

/// <summary>A word to choose.</summary>
/// <param name="Word">The word as the kit writes it.</param>
/// <param name="Label">The same for people.</param>
public sealed record FormChoice(string Word, string Label);
