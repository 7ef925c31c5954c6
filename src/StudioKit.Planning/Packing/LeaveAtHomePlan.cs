using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>What stays at home so that the rest is light enough, at the least loss of framings and set-ups.</summary>
public sealed record LeaveAtHomePlan
{
    /// <summary>Mass asked for, bags included.</summary>
    public required Mass Target { get; init; }

    /// <summary>What to change before anything is left, in order; each loses no framing. Empty where nothing is lost without.</summary>
    public IReadOnlyList<LighterStep> Lighter { get; init; } = [];

    /// <summary>Names of the things to leave.</summary>
    public required IReadOnlyList<string> Left { get; init; }

    /// <summary>The same as lines of the pack list; empty where only their names are known.</summary>
    public IReadOnlyList<PackedItem> LeftItems { get; init; } = [];

    /// <summary>Names of the things to leave, for whoever reads of them.</summary>
    public IReadOnlyList<string> LeftWords => LeftItems.Count == 0 ? Left : [.. LeftItems.Select(item => item.Words)];

    /// <summary>What can no longer be done, each a set-up and a framing.</summary>
    public required IReadOnlyList<string> Lost { get; init; }

    /// <summary>Mass of what is left to carry, bags included.</summary>
    public required Mass Mass { get; init; }

    /// <summary>Whether that is within the target; where it is not, all that could be left was.</summary>
    public required bool Reached { get; init; }

    /// <summary>Whether no other choice loses less.</summary>
    public required bool ProvenLeast { get; init; }
}
