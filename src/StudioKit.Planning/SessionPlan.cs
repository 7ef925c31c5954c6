using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>A session in the field: which subject first, in which set-up, how long it takes and what it uses up.</summary>
public sealed record SessionPlan
{
    /// <summary>How the order was found, a sentence or two.</summary>
    public const string Rule =
        "First everything that is photographed where it sits. Then the shortest hold limit first, of equal ones amphibians, snails, flying insects, crawling ones, "
        + "reptiles, plants and fungi, each finished before the next is fetched. Within that, fewest changes of set-up, then of framing.";

    /// <summary>The steps in order.</summary>
    public required IReadOnlyList<SessionStep> Steps { get; init; }

    /// <summary>The subjects in order.</summary>
    public required IReadOnlyList<SessionSubject> Subjects { get; init; }

    /// <summary>Flashes and cells of the day, all rounds together.</summary>
    public required IReadOnlyList<FlashUse> Flashes { get; init; }

    /// <summary>How often a day the session is gone through [1].</summary>
    public required int Rounds { get; init; }

    /// <summary>Changes of set-up in a round [1].</summary>
    public int Changes => Steps.Count(step => step.Kind == SessionStepKind.Changing);

    /// <summary>Whether no other order in keeping with the rule has fewer changes.</summary>
    public required bool ProvenFewest { get; init; }

    /// <summary>Time for one round.</summary>
    public Duration Time => Duration.FromSeconds(Steps.Sum(step => step.Time.Seconds));

    /// <summary>Frames taken in one round [1].</summary>
    public int FramesInRound => Steps.Sum(step => step.Frames);

    /// <summary>Flashes fired in one round, every head counted [1].</summary>
    public int FlashesInRound => Steps.Sum(step => step.Flashes);

    /// <summary>What is left out, and advice, one sentence each.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
