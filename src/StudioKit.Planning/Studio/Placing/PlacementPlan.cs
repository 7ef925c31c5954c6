namespace StudioKit.Planning.Studio.Placing;

/// <summary>Where the flash below should go in one set-up, found by search.</summary>
public sealed record PlacementPlan
{
    /// <summary>Name of the set-up.</summary>
    public required string SetUp { get; init; }

    /// <summary>Candidates worked out [1].</summary>
    public required int Evaluated { get; init; }

    /// <summary>The placement that serves every framing with the least energy; none where none does.</summary>
    public PlacementChoice? Recommended { get; init; }

    /// <summary>What the kit has now.</summary>
    public required PlacementChoice Own { get; init; }

    /// <summary>Where none serves every framing: the one that comes nearest.</summary>
    public PlacementChoice? Nearest { get; init; }

    /// <summary>Where none serves every framing: what stands in the way, and what would help.</summary>
    public string? Advice { get; init; }

    /// <summary>Placements that no other beats in both energy and evenness, least energy first.</summary>
    public required IReadOnlyList<PlacementChoice> Frontier { get; init; }

    /// <summary>Share of the kit's own energy that the recommendation saves [1]; none where either does not serve every framing.</summary>
    public double? EnergySaved { get; init; }

    /// <summary>Lines of the kit file that the recommendation asks for, each under its section; empty where nothing changes.</summary>
    public required IReadOnlyList<string> KitLines { get; init; }

    /// <summary>Limits of the search that the reader must know.</summary>
    public required IReadOnlyList<string> Caveats { get; init; }
}
