using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Identical pieces of pipe.</summary>
/// <param name="Group">The letter they share.</param>
/// <param name="Members">Labels of the pieces.</param>
/// <param name="Exact">Length by geometry.</param>
/// <param name="Rounded">Length to mark and cut.</param>
/// <param name="TakenUpPerEnd">What rounding adds to the insertion gap at each end; negative where it takes some away.</param>
public sealed record CutListEntry(
    string Group, IReadOnlyList<string> Members, Length Exact, Length Rounded, Length TakenUpPerEnd)
{
    /// <summary>Number of pieces [1].</summary>
    public int Count => Members.Count;
}
