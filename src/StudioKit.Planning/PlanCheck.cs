using StudioKit.Physics.Structure;
using StudioKit.Planning.Checks;

namespace StudioKit.Planning;

/// <summary>One thing the plan was checked for: what is asked, what is given, and what would make it pass. Sentences are made where it is shown.</summary>
public sealed record PlanCheck
{
    /// <summary>What was checked.</summary>
    public required PlanCheckKind Kind { get; init; }

    /// <summary>Names of the parts it is about, in the order that the kind gives; none where it is about the whole studio.</summary>
    public IReadOnlyList<string> Parts { get; init; } = [];

    /// <summary>Whether it passes.</summary>
    public required bool Passed { get; init; }

    /// <summary>What is asked of it.</summary>
    public CheckAmount Demand { get; init; } = CheckAmount.Unmeasured;

    /// <summary>What it can bear or gives.</summary>
    public CheckAmount Capacity { get; init; } = CheckAmount.Unmeasured;

    /// <summary>Demand over capacity [1]; none where the two are not numbers.</summary>
    public double? Ratio { get; init; }

    /// <summary>What it takes for given; none where the kit's own sizes say it all.</summary>
    public IReadOnlyList<StructuralLoad> Loads { get; init; } = [];

    /// <summary>Key of the source in the bibliography.</summary>
    public required string SourceKey { get; init; }

    /// <summary>Where in the source.</summary>
    public required string SourceLocator { get; init; }

    /// <summary>What stands in the way, as the stage of the plan that met it says; none where the amounts say it all.</summary>
    public IReadOnlyList<CheckFinding> Findings { get; init; } = [];

    /// <summary>What would make it pass; none where it passes, or where the findings say it.</summary>
    public CheckRemedy? Remedy { get; init; }

    /// <summary>Limits of the theory that the reader must know.</summary>
    public IReadOnlyList<CheckCaveat> Caveats { get; init; } = [];
}
