namespace StudioKit.Planning;

/// <summary>One thing the plan was checked for.</summary>
public sealed record PlanCheck
{
    /// <summary>What was checked, e.g. "Panel size".</summary>
    public required string Name { get; init; }

    /// <summary>Whether it passes.</summary>
    public required bool Passed { get; init; }

    /// <summary>What is asked of it, with its unit.</summary>
    public required string Demand { get; init; }

    /// <summary>What it can bear or gives, with its unit.</summary>
    public required string Capacity { get; init; }

    /// <summary>Demand over capacity [1]; none where the two are not numbers.</summary>
    public double? Ratio { get; init; }

    /// <summary>Key of the source in the bibliography.</summary>
    public required string SourceKey { get; init; }

    /// <summary>Where in the source.</summary>
    public required string SourceLocator { get; init; }

    /// <summary>What would make it pass; empty where it passes.</summary>
    public string Remedy { get; init; } = "";

    /// <summary>Limits of the theory that the reader must know.</summary>
    public IReadOnlyList<string> Caveats { get; init; } = [];

    /// <summary>The caveats behind the name of what was checked, as one line; empty where there are none.</summary>
    public string Note => Caveats.Count == 0 ? "" : $"{Name}: {string.Join(' ', Caveats)}";
}
