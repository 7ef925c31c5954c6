using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>What would make a structural check hold.</summary>
/// <param name="Kind">What to do.</param>
public sealed record StructuralRemedy(StructuralRemedyKind Kind)
{
    /// <summary>The sheet's thickness, the sweep's radius or the room at an edge that would do, by the kind; none where the kind has none.</summary>
    public Length? Size { get; init; }

    /// <summary>The ballast that would do; none where the kind has none.</summary>
    public BallastNeed? Ballast { get; init; }
}
