namespace StudioKit.Sheets.Drawings;

/// <summary>Lists of marks in one's hand at once.</summary>
/// <remarks>A set of sheets has a hundred thousand marks, each of which goes through several hands: arrays are copied whole, where iterators in each other are asked mark by mark.</remarks>
internal static class MarkLists
{
    /// <summary>The marks after scaling, turning and shifting.</summary>
    public static Primitive[] Under(this IReadOnlyList<Primitive> marks, Similarity change)
    {
        var all = Made(marks);
        var moved = new Primitive[all.Count];
        for (var i = 0; i < moved.Length; i++)
        {
            moved[i] = all[i].Under(change);
        }

        return moved;
    }

    /// <summary>The marks under one tag.</summary>
    public static Primitive[] As(this IReadOnlyList<Primitive> marks, Tagging.Tag tag) => [.. Made(marks).Select(mark => mark with { Tag = tag })];

    /// <summary>The marks themselves, where they are made when somebody asks for them.</summary>
    public static IReadOnlyList<Primitive> Made(IReadOnlyList<Primitive> marks)
    {
        while (marks is IUnmadeMarks unmade)
        {
            marks = unmade.Make();
        }

        return marks;
    }
}
