namespace StudioKit.Kits;

/// <summary>Bags, people and the other things carried.</summary>
public sealed record PackSpec
{
    /// <summary>Bags; the first carries the studio unless an item says otherwise.</summary>
    public IReadOnlyList<BagSpec> Bags { get; init; } = [];

    /// <summary>The people who carry.</summary>
    public IReadOnlyList<PersonSpec> People { get; init; } = [];

    /// <summary>Everything carried that is no part of camera, lighting, panel or frame.</summary>
    public IReadOnlyList<PackItemSpec> Items { get; init; } = [];
}
