using StudioKit.Kits.Subjects;
using UnitsNet;

namespace StudioKit.Planning.Handling;

/// <summary>How the subjects of one group are handled.</summary>
public sealed record HandlingCard
{
    /// <summary>The group.</summary>
    public required SubjectGroup Group { get; init; }

    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>What belongs to it; empty where the guide says nothing.</summary>
    public string Examples { get; init; } = "";

    /// <summary>Most time that one is held; none where nothing is held.</summary>
    public Duration? HoldLimit { get; init; }

    /// <summary>The kit's subjects in the group, with the limit of each; the kit's own goes before the guide's.</summary>
    public required IReadOnlyList<HeldSubject> Subjects { get; init; }

    /// <summary>The advice by topic, local rules first.</summary>
    public required IReadOnlyList<HandlingAdvice> Lines { get; init; }
}
