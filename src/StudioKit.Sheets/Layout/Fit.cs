using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>What a block made of the room it was given.</summary>
/// <param name="Height">Height used [mm].</param>
/// <param name="Marks">What is printed, from the upper left corner of the room.</param>
internal sealed record Fit(double Height, IReadOnlyList<Primitive> Marks)
{
    public IReadOnlyList<Bookmark> Bookmarks { get; init; } = [];

    /// <summary>What did not fit; nothing where all did.</summary>
    public Block? Rest { get; init; }

    /// <summary>Why nothing at all fitted, in words for a person.</summary>
    public string? Problem { get; init; }

    /// <summary>True where the next page must be begun whatever room is left on this one.</summary>
    public bool EndsPage { get; init; }

    public static Fit Nothing(Block whole, string problem) => new(0, []) { Rest = whole, Problem = problem };

    /// <summary>The block where its room is tall enough, nothing of it where not.</summary>
    public static Fit WholeOrNothing(Block whole, string what, double needed, double room, Func<IReadOnlyList<Primitive>> draw) =>
        needed <= room
            ? new Fit(needed, new DrawnLater(draw))
            : Nothing(whole, FormattableString.Invariant($"{what} needs {needed:0} mm of height; there are {room:0} mm."));
}
