namespace StudioKit.Web.Results;

/// <summary>Parts of the library.</summary>
/// <param name="Parts">The parts, in alphabetical order.</param>
/// <param name="Of">How many there are of the kind.</param>
public sealed record PartsAnswer(IReadOnlyList<PartLine> Parts, int Of);
