using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Studio.Hardware;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>A line of the pack list.</summary>
public sealed record PackedItem
{
    /// <summary>Name; unique in the pack.</summary>
    public required string Name { get; init; }

    /// <summary>Its name with its sizes, where it has sizes in it.</summary>
    public SoldName? Sold { get; init; }

    /// <summary>The tool that it is; none for all else.</summary>
    public ToolLine? Tool { get; init; }

    /// <summary>Its number among those of the same name; none for the first.</summary>
    public int? Again { get; init; }

    /// <summary>Its name for whoever reads the list.</summary>
    public string Words => (Tool is { } tool ? ToolText.Name(tool) : Sold?.Words) is { } words ? (Again is { } number ? FormattableString.Invariant($"{words} ({number})") : words) : Name;

    /// <summary>How many [1].</summary>
    public required int Count { get; init; }

    /// <summary>Mass of all of them.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Where the mass comes from.</summary>
    public required MassOrigin Origin { get; init; }

    /// <summary>What it is for.</summary>
    public PackItemKind Kind { get; init; }

    /// <summary>Which part of the studio it is; none for all else.</summary>
    public StudioPart? Part { get; init; }

    /// <summary>Name of the upright sheet that it is or holds; none for all else.</summary>
    public string? Upright { get; init; }

    /// <summary>Name of the holder or modifier that it belongs to; none for all else.</summary>
    public string? BelongsTo { get; init; }

    /// <summary>Name of the flash whose cells these are; none for all else.</summary>
    public string? CellsOf { get; init; }

    /// <summary>Whether they are in the flash and travel with it.</summary>
    public bool InFlash { get; init; }

    /// <summary>Bag it goes in; none where the kit has no bag or none takes it.</summary>
    public string? Bag { get; init; }

    /// <summary>Whether the kit says which bag, so that it is not shared out.</summary>
    public bool BagGiven { get; init; }

    /// <summary>When it is needed on site.</summary>
    public required PackItemStage Stage { get; init; }

    /// <summary>Outside of one; none where it is not known.</summary>
    public BoxSize? Size { get; init; }

    /// <summary>Whether the size is a usual one that stands in.</summary>
    public bool SizeAssumed { get; init; }

    /// <summary>Longest side; none where it is not known.</summary>
    public Length? LongestSide => Size?.Longest;

    /// <summary>Whether it breaks easily.</summary>
    public bool Fragile { get; init; }

    /// <summary>Whether it is strapped outside the bag.</summary>
    public bool Outside { get; init; }

    /// <summary>Whether it stays when things are left at home: the kit calls it essential, or it is the camera or its cells.</summary>
    public bool Essential { get; init; } = true;
}
