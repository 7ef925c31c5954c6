namespace StudioKit.Planning.Exploring;

/// <summary>How designs are looked for.</summary>
public sealed record DesignSearchOptions
{
    /// <summary>Designs that are tried at most, but for what it takes to try all that differ from a shown one in a single choice [1]; ≥ 1. So many or fewer are all tried.</summary>
    public int Most { get; init; } = 2000;

    /// <summary>Seed of the search where not all are tried: same seed, same answer.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>How many are planned at once [1]; ≥ 1. It changes no answer.</summary>
    public int AtOnce { get; init; } = 1;

    /// <summary>How many are tried in a step, after which progress is told [1]; ≥ 1. It changes no answer.</summary>
    public int InAStep { get; init; } = 64;

    /// <summary>Cut planners; the plain ones where none are given.</summary>
    public PlanningServices Services { get; init; } = new();
}
