namespace StudioKit.Planning.Session;

/// <summary>A letter and what it stands for.</summary>
/// <param name="Letter">The letter, or two where one is not enough.</param>
/// <param name="Name">Name of the framing or set-up.</param>
public sealed record LetterKey(string Letter, string Name);
