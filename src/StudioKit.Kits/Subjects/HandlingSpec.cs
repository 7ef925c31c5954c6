using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Kits.Subjects;

/// <summary>How living things of one group are handled.</summary>
/// <remarks>
/// A part of the library, <c>parts/handling/GROUP.yaml</c>; a file of that name beside the kit takes its place. The part
/// <c>every-group</c> holds what goes for all of them.
/// </remarks>
/// <example><code language="yaml">
/// source: each line names its own
/// name: amphibians
/// hold-limit: 5 min
/// lines:
///   - {topic: holding, text: "Wet hands."}
/// </code></example>
public sealed record HandlingSpec
{
    /// <summary>Name of the group on the card.</summary>
    public required string Name { get; init; }

    /// <summary>Which group; none for what goes for every group.</summary>
    public SubjectGroup? Group { get; init; }

    /// <summary>What belongs to it, e.g. <c>frogs, toads, newts</c>.</summary>
    public string Examples { get; init; } = "";

    /// <summary>Most time that one is held; none where nothing is held.</summary>
    public Duration? HoldLimit { get; init; }

    /// <summary>Whether it, and the sheet under it, is kept wet.</summary>
    public bool KeptWet { get; init; }

    /// <summary>The advice.</summary>
    public required ValueList<HandlingLineSpec> Lines { get; init; }
}
