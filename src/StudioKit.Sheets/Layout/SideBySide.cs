using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>Blocks beside each other, none of them split.</summary>
/// <param name="Columns">The blocks, each with its share of the width.</param>
/// <param name="Gap">Room between them [mm].</param>
internal sealed record SideBySide(IReadOnlyList<(Block Block, double Share)> Columns, double Gap = 6) : Block
{
    /// <summary>Blocks in rows of equal columns in their order; what is missing in the last row stays empty.</summary>
    /// <param name="blocks">The blocks.</param>
    /// <param name="abreast">How many to a row [1]; ≥ 1.</param>
    public static IEnumerable<Block> Rows(IEnumerable<Block> blocks, int abreast = 2) => blocks.Chunk(abreast)
        .Select(row => new SideBySide([.. row.Select(block => (block, 1.0)), .. Enumerable.Repeat(((Block)new Spacer(0), 1.0), abreast - row.Length)]));

    public override Fit Fit(double width, double height)
    {
        var shares = Columns.Sum(column => column.Share);
        var room = width - (Gap * (Columns.Count - 1));
        var marks = new List<Primitive>();
        var bookmarks = new List<Bookmark>();
        var (x, tallest) = (0.0, 0.0);
        foreach (var (block, share) in Columns)
        {
            var fit = block.Fit(room * share / shares, double.PositiveInfinity);
            marks.AddRange(fit.Marks.Under(Similarity.Shift(x, 0)));
            bookmarks.AddRange(fit.Bookmarks);
            tallest = Math.Max(tallest, fit.Height);
            x += (room * share / shares) + Gap;
        }

        return Layout.Fit.WholeOrNothing(this, "What stands side by side", tallest, height, () => marks) with { Bookmarks = bookmarks };
    }
}
