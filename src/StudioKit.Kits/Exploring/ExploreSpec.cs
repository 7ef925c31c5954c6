using StudioKit.Physics;

namespace StudioKit.Kits.Exploring;

/// <summary>What a kit leaves open, and how its designs are compared.</summary>
public sealed record ExploreSpec
{
    /// <summary>What is left open; empty where the usual is.</summary>
    public ValueList<DesignChoiceSpec> Choices { get; init; } = [];

    /// <summary>What designs are compared by, two to four; empty where the usual is.</summary>
    public ValueList<DesignMeasure> Measures { get; init; } = [];

    /// <summary>How far measures may go.</summary>
    public ValueList<DesignLimit> Limits { get; init; } = [];
}
