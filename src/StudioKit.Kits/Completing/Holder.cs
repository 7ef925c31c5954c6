using StudioKit.Kits.Description;

namespace StudioKit.Kits.Completing;

/// <summary>A key or a hyphen that holds what stands farther in.</summary>
/// <param name="column">Blanks before it; -1 for the kit itself.</param>
/// <param name="facts">What its key takes; none for the kit itself and under keys that nobody knows.</param>
/// <param name="isItem">Whether it is a hyphen.</param>
internal sealed class Holder(int column, KeyFacts? facts, bool isItem)
{
    public int Column => column;

    public KeyFacts? Facts => facts;

    public bool IsItem => isItem;

    /// <summary>Blanks before the keys that it holds; none where none were seen yet.</summary>
    public int? Inner { get; set; }

    /// <summary>Whether its value stands on its own line, so that nothing farther in can belong to it.</summary>
    public bool IsFilled { get; set; }

    /// <summary>The section whose keys it holds; none where it holds single values, or a list.</summary>
    public ISection? Section => column < 0 ? KitSection.Kit : facts is { Inner: { } inner } && (isItem || !facts.IsList) ? inner : null;

    /// <summary>Whether it is a key whose entries begin with hyphens.</summary>
    public bool IsList => !isItem && facts is { IsList: true, Inner: not null };
}
