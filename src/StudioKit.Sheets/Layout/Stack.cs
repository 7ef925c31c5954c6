using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>Blocks under each other, which flow over pages.</summary>
internal sealed record Stack(IReadOnlyList<Block> Blocks, double Gap = 2.5) : Block
{
    public override Fit Fit(double width, double height)
    {
        var set = new List<(Fit Fit, double Top)>();
        var marks = new DrawnLater(() => [.. set.SelectMany(one => one.Fit.Marks.Under(Similarity.Shift(0, one.Top)))]);
        var bookmarks = new List<Bookmark>();
        var y = 0.0;
        for (var i = 0; i < Blocks.Count; i++)
        {
            var top = y == 0 ? 0 : y + Gap;
            var fit = FitOne(i, width, height - top);
            if (fit.Problem is not null)
            {
                return y == 0 ? fit with { Rest = this } : Part(y, marks, bookmarks, [.. Blocks.Skip(i)]);
            }

            set.Add((fit, top));
            bookmarks.AddRange(fit.Bookmarks.Select(bookmark => bookmark with { Y = bookmark.Y + top }));
            y = fit.Height > 0 ? top + fit.Height : y;
            if (fit.Rest is not null || fit.EndsPage)
            {
                Block[] left = fit.Rest is null ? [] : [fit.Rest];
                return Part(y, marks, bookmarks, [.. left, .. Blocks.Skip(i + 1)]) with { EndsPage = fit.EndsPage };
            }
        }

        return Part(y, marks, bookmarks, []);
    }

    public override Fit Force(double width, double height)
    {
        var headings = Blocks.TakeWhile((block, i) => block is Heading && i + 1 < Blocks.Count).ToList();
        var over = (this with { Blocks = headings }).Fit(width, height);
        var top = headings.Count == 0 ? 0 : over.Height + Gap;
        var fit = Blocks[headings.Count].Force(width, height - top);
        if (fit.Problem is not null)
        {
            return Layout.Fit.Nothing(this, fit.Problem);
        }

        Block[] left = fit.Rest is null ? [] : [fit.Rest];
        return Part(
            top + fit.Height,
            [.. over.Marks, .. fit.Marks.Under(Similarity.Shift(0, top))],
            [.. over.Bookmarks, .. fit.Bookmarks.Select(bookmark => bookmark with { Y = bookmark.Y + top })],
            [.. left, .. Blocks.Skip(headings.Count + 1)]) with
        { EndsPage = fit.EndsPage };
    }

    /// <summary>The stack with another block in place of the first that is neither a stack nor a heading over others.</summary>
    public Stack ReplaceFirst(Block replacement)
    {
        var first = Blocks.TakeWhile((block, i) => block is Heading && i + 1 < Blocks.Count).Count();
        return this with { Blocks = [.. Blocks.Take(first), Blocks[first] is Stack inner ? inner.ReplaceFirst(replacement) : replacement, .. Blocks.Skip(first + 1)] };
    }

    /// <summary>The stack with another ending; none where it does not end so.</summary>
    public Stack? Ending(Stack end, Stack other)
    {
        var before = Blocks.Count - end.Blocks.Count;
        return before > 0 && Enumerable.Range(0, end.Blocks.Count).All(i => ReferenceEquals(Blocks[before + i], end.Blocks[i])) ? this with { Blocks = [.. Blocks.Take(before), .. other.Blocks] } : null;
    }

    // A heading is only set where something of what it heads comes under it; on an empty page, what it heads is made to fit.
    private Fit FitOne(int index, double width, double room)
    {
        var fit = Blocks[index].Fit(width, room);
        if (Blocks[index] is not Heading || fit.Problem is not null || index + 1 == Blocks.Count)
        {
            return fit;
        }

        var below = FitOne(index + 1, width, room - fit.Height - Gap);
        return below.Problem is null ? fit : Layout.Fit.Nothing(this, "A heading would stand alone at the foot of the page.");
    }

    private Fit Part(double height, IReadOnlyList<Primitive> marks, List<Bookmark> bookmarks, IReadOnlyList<Block> left) =>
        new(height, marks) { Bookmarks = bookmarks, Rest = left.Count == 0 ? null : this with { Blocks = left } };
}
