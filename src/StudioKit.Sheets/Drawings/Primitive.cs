using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Drawings;

/// <summary>One mark on a drawing.</summary>
public abstract record Primitive
{
    private protected Primitive()
    {
    }

    /// <summary>What it is to somebody who is read to; nothing where nobody said.</summary>
    internal Tag? Tag { get; init; }

    /// <summary>The rectangle that the mark covers, line width left out [mm].</summary>
    public abstract Bounds Bounds { get; }

    /// <summary>The mark after scaling, turning and shifting; text and line widths keep their size on paper.</summary>
    /// <param name="change">What to do to it.</param>
    /// <returns>The changed mark.</returns>
    public abstract Primitive Under(Similarity change);
}
