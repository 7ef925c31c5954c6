namespace StudioKit.Physics.Packing;

/// <summary>Which thing goes in which bag.</summary>
/// <param name="Bags">The bags, in the order given.</param>
/// <param name="People">The people who carry them.</param>
/// <param name="HighestUse">Use of the limit that is used most, of a person or a bag [1]; all limits hold up to 1.</param>
/// <param name="ProvenOptimal">Whether no other assignment uses the most used limit less, by more than a gram.</param>
public sealed record BagAssignmentResult(
    IReadOnlyList<PackedBag> Bags,
    IReadOnlyList<PersonLoad> People,
    double HighestUse,
    bool ProvenOptimal);
