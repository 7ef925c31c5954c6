using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>A line of the pack list.</summary>
public sealed record PackedItem
{
    /// <summary>Name.</summary>
    public required string Name { get; init; }

    /// <summary>How many [1].</summary>
    public required int Count { get; init; }

    /// <summary>Mass of all of them.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Where the mass comes from.</summary>
    public required MassOrigin Origin { get; init; }

    /// <summary>Bag it goes in; none where the kit has no bag.</summary>
    public string? Bag { get; init; }

    /// <summary>When it is needed on site.</summary>
    public required PackItemStage Stage { get; init; }

    /// <summary>Longest side; none where it was not given.</summary>
    public Length? LongestSide { get; init; }

    /// <summary>Whether it breaks easily.</summary>
    public bool Fragile { get; init; }

    /// <summary>Whether it is strapped outside the bag.</summary>
    public bool Outside { get; init; }
}
