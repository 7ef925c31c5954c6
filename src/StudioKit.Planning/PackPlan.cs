using UnitsNet;

namespace StudioKit.Planning;

/// <summary>What is carried and what it weighs.</summary>
public sealed record PackPlan
{
    /// <summary>Every line, in the order things are needed on site.</summary>
    public required IReadOnlyList<PackedItem> Items { get; init; }

    /// <summary>The bags; empty where the kit names none.</summary>
    public required IReadOnlyList<BagLoad> Bags { get; init; }

    /// <summary>Everything together, bags included.</summary>
    public required Mass Total { get; init; }

    /// <summary>Cells of the flashes.</summary>
    public required IReadOnlyList<CellStock> Cells { get; init; }

    /// <summary>Limits and advice, one sentence each.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
