using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Kits.Carrying;

/// <summary>Bags, people and the other things carried.</summary>
public sealed record PackSpec
{
    /// <summary>Bags; whatever names no bag is shared out among them.</summary>
    public ValueList<BagSpec> Bags { get; init; } = [];

    /// <summary>The people who carry.</summary>
    public ValueList<PersonSpec> People { get; init; } = [];

    /// <summary>Everything carried that is no part of camera, lighting, panel or frame.</summary>
    public ValueList<PackItemSpec> Items { get; init; } = [];

    /// <summary>Share of body mass that nobody should carry more than [1]; above 0, at most 0.4.</summary>
    public double HighestShare { get; init; } = 0.25;

    /// <summary>Share of a bag's volume that boxes of odd sizes fill [1]; above 0, at most 1.</summary>
    public double PackingFactor { get; init; } = 0.7;

    /// <summary>Mass that everything may have, bags included; none where nothing need stay at home.</summary>
    public Mass? TargetMass { get; init; }
}
