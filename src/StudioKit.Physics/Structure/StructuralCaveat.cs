using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>Where the theory of a structural check is strained, or one of its values is a guess; sheets must print it.</summary>
/// <param name="Kind">What to bear in mind.</param>
public sealed record StructuralCaveat(StructuralCaveatKind Kind)
{
    /// <summary>The sag or growth that the kind is about; none where it is about none.</summary>
    public Length? Size { get; init; }

    /// <summary>The stress that the kind is about; none where it is about none.</summary>
    public Pressure? Stress { get; init; }

    /// <summary>The safety factor that is allowed for [1]; none where the kind has none.</summary>
    public double? Safety { get; init; }

    /// <summary>Warmth of the pipe; none where the kind has none.</summary>
    public Temperature? Warmth { get; init; }

    /// <summary>Share of its stiffness that a warm pipe keeps [1]; none where the kind has none.</summary>
    public double? StiffnessKept { get; init; }

    /// <summary>Share of its strength that a warm pipe keeps [1]; none where the kind has none.</summary>
    public double? StrengthKept { get; init; }
}
