namespace StudioKit.Physics.Light;

/// <summary>One thing that is wrong with the geometry of a studio.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Sentence">It in words, with the numbers.</param>
public sealed record LightProblem(LightProblemKind Kind, string Sentence);
