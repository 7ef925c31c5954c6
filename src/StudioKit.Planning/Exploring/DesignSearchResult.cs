using StudioKit.Kits.Exploring;
using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>What a search for designs found.</summary>
public sealed record DesignSearchResult
{
    /// <summary>The designs looked among.</summary>
    public required DesignSpace Space { get; init; }

    /// <summary>What they are compared by.</summary>
    public required DesignAim Aim { get; init; }

    /// <summary>The kit as it is written.</summary>
    public required TriedDesign Own { get; init; }

    /// <summary>Designs that no other of those tried beats, the best by the first measure first.</summary>
    public required ValueList<ShownDesign> Shown { get; init; }

    /// <summary>What each choice does, the one that matters most first.</summary>
    public required ValueList<ChoiceEffect> Effects { get; init; }

    /// <summary>Designs tried [1], by what became of them.</summary>
    public required ValueList<DesignTally> Tried { get; init; }

    /// <summary>How many of the designs tried fail each check, the check that most fail first.</summary>
    public required ValueList<FailingTally> Failing { get; init; }

    /// <summary>Why some cannot be: what the kit's reader says first of them, each once.</summary>
    public required ValueList<string> CannotBe { get; init; }

    /// <summary>The best figure of each measure that is compared or limited, each by itself, of all designs tried that stand; none where none has one.</summary>
    public required ValueList<BestFigure> Best { get; init; }

    /// <summary>Seed of the search.</summary>
    public required int Seed { get; init; }

    /// <summary>Whether it was stopped before it was through.</summary>
    public required bool IsStopped { get; init; }

    /// <summary>How many were tried [1].</summary>
    public int Count => Tried.Sum(tally => tally.Count);

    /// <summary>Whether all designs were tried, so that what is shown is proven.</summary>
    public bool IsComplete => Count >= Space.Count;

    /// <summary>Whether no single change of one choice improves any design shown.</summary>
    public bool IsClosed => Shown.All(design => design.IsClosed);

    /// <summary>Whether a measure is known of the kit as it is written.</summary>
    /// <param name="measure">The measure.</param>
    public bool Knows(DesignMeasure measure) => Own.Figures?[measure] is not null;
}
