namespace StudioKit.Physics.Light.Placements;

/// <summary>What a search for the flash's place found.</summary>
/// <param name="Recommended">The placement that serves every framing with the least energy; none where none does.</param>
/// <param name="Frontier">Placements that serve every framing and that no other beats in both energy and evenness, least energy first.</param>
/// <param name="Nearest">Where none serves every framing: the one that comes nearest.</param>
/// <param name="Advice">Where none serves every framing: what stands in the way of the nearest, and what would help.</param>
/// <param name="Evaluated">Candidates weighed: worked out, or shown to be beaten [1].</param>
public sealed record PlacementResult(
    Placement? Recommended, IReadOnlyList<Placement> Frontier, Placement? Nearest, string? Advice, int Evaluated);
