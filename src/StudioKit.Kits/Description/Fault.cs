namespace StudioKit.Kits.Description;

/// <summary>A contradiction between the values of one section.</summary>
/// <param name="Key">Key to point at; the section itself where it was left out.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Hint">How to put it right.</param>
/// <param name="IsWarning">Whether the kit can be used all the same.</param>
internal sealed record Fault(string Key, string Message, string Hint, bool IsWarning = false);
