using UnitsNet;

namespace StudioKit.Kits.Subjects;

/// <summary>The feature by which a subject is told from its like: hairs, veins, facets, scale rows.</summary>
public sealed record FeatureSpec
{
    /// <summary>What it is.</summary>
    public required string Name { get; init; }

    /// <summary>Distance from one line of it to the next; none where <see cref="Size"/> is given.</summary>
    public Length? Spacing { get; init; }

    /// <summary>Width of a single one, a hair or a dot; none where <see cref="Spacing"/> is given.</summary>
    public Length? Size { get; init; }

    /// <summary>How deep it lies along the line of sight; flat where the kit gives none.</summary>
    public Length Relief { get; init; }

    /// <summary>Its contrast, (bright − dark)/(bright + dark) of what it reflects [1]; above 0, at most 1. A half is common practice, no source.</summary>
    public double Contrast { get; init; } = 0.5;

    /// <summary>Distance from one line to the next that it is judged by; of a single one twice its width, as a bright and a dark line make one period.</summary>
    public Length Period => Spacing ?? (Size ?? Length.Zero) * 2;
}
