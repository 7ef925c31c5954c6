namespace StudioKit.Planning.Checks;

/// <summary>What stands in the way of a check.</summary>
/// <param name="Part">Name of the part it is about; none where the sentence names it.</param>
/// <param name="Sentence">What is wrong with it.</param>
public sealed record CheckFinding(string? Part, string Sentence);
