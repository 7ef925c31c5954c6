using UnitsNet;

namespace StudioKit.Kits.Carrying;

/// <summary>A thing carried that is no part of camera, lighting, panel or frame.</summary>
public sealed record PackItemSpec
{
    /// <summary>Name on the pack list.</summary>
    public required string Name { get; init; }

    /// <summary>Mass of one.</summary>
    public required Mass Mass { get; init; }

    /// <summary>How many [1]; 1 or more.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Longest side; with the next two the file's <c>size: 300 mm x 80 mm x 80 mm</c>.</summary>
    public Length? Length { get; init; }

    /// <summary>Second side.</summary>
    public Length? Width { get; init; }

    /// <summary>Third side.</summary>
    public Length? Depth { get; init; }

    /// <summary>Bag it must go in; free where the kit gives none.</summary>
    public string? Bag { get; init; }

    /// <summary>What it is for.</summary>
    public PackItemKind Kind { get; init; } = PackItemKind.General;

    /// <summary>When it is needed.</summary>
    public PackItemStage Stage { get; init; } = PackItemStage.Shooting;

    /// <summary>Whether it breaks easily.</summary>
    public bool Fragile { get; init; }

    /// <summary>Whether the day cannot do without it.</summary>
    public bool Essential { get; init; } = true;
}
