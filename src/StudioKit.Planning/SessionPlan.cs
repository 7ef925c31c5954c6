using StudioKit.Physics;
using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>A session in the field: in which light which set-ups, which subject first, how long it takes and what it uses up.</summary>
public sealed record SessionPlan
{
    /// <summary>How the order was found, a few sentences.</summary>
    public const string Rule =
        "Set-ups share a block where each works in the light that every other is planned for, and their hours meet: as few blocks as there can be, from the brightest light "
        + "to the darkest, those with hours by the clock; with a date and a place in the order in which the day has their light. Subjects that are about at other hours have a block of their own. No animal is kept from one block for the next. In a round, first everything that is photographed where it sits. Then the shortest hold limit "
        + "first, of equal ones amphibians, water animals, small mammals, snails, flying insects, crawling ones, centipedes, scorpions, reptiles, plants and fungi, lifeless things, each finished before the next is fetched. Within that, fewest changes of set-up, then of framing.";

    /// <summary>The blocks in the order of the day; what stands in one block is photographed in one light.</summary>
    public required ValueList<SessionBlock> Blocks { get; init; }

    /// <summary>The subjects in order.</summary>
    public required IReadOnlyList<SessionSubject> Subjects { get; init; }

    /// <summary>Flashes and cells of the day, all rounds together.</summary>
    public required IReadOnlyList<FlashUse> Flashes { get; init; }

    /// <summary>How often a day each block is gone through [1].</summary>
    public required int Rounds { get; init; }

    /// <summary>The steps of every block's first round, in order.</summary>
    public IEnumerable<SessionStep> Steps => Blocks.SelectMany(block => block.First.Steps);

    /// <summary>Changes of set-up in the first rounds [1].</summary>
    public int Changes => Blocks.Sum(block => block.First.Changes);

    /// <summary>Whether no other order in keeping with the rule has fewer blocks, or fewer changes in a round.</summary>
    public required bool ProvenFewest { get; init; }

    /// <summary>Time at work in the day, all rounds together.</summary>
    public Duration Time => Duration.FromSeconds(Blocks.Sum(block => block.Time.Seconds));

    /// <summary>Frames of the day [1].</summary>
    public int Frames => Blocks.Sum(block => block.Frames);

    /// <summary>What is left out, and advice, one sentence each.</summary>
    public IReadOnlyList<string> Notes { get; init; } = [];
}
