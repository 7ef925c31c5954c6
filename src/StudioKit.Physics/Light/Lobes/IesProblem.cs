namespace StudioKit.Physics.Light.Lobes;

/// <summary>What is wrong with a photometric file's text.</summary>
/// <param name="Line">Line, counted from 1; the last where the text ends too early.</param>
/// <param name="Column">Column, counted from 1; behind the last one where the text ends too early.</param>
/// <param name="Sentence">What is wrong, and what would be accepted.</param>
public sealed record IesProblem(int Line, int Column, string Sentence);
