namespace StudioKit.Web.Results;

/// <summary>What could stand at a place of a text.</summary>
/// <param name="Candidates">The candidates, in the order in which the kit has them.</param>
public sealed record CompleteAnswer(IReadOnlyList<Candidate> Candidates);
