using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Layout;

/// <summary>Blocks that flow down one column and then down the next, the columns as even as they get where all fits.</summary>
/// <param name="Inner">The blocks.</param>
/// <param name="Columns">How many columns [1]; ≥ 1.</param>
internal sealed record InColumns(Stack Inner, int Columns = 2) : Block
{
    private const double Gap = 6;

    // Even columns are sought to the millimetre.
    private const double Step = 1;

    public override Fit Fit(double width, double height)
    {
        var column = (width - (Gap * (Columns - 1))) / Columns;
        var whole = Inner.Fit(column, double.PositiveInfinity);
        if (whole.Problem is not null)
        {
            return whole with { Rest = this };
        }

        for (var tried = Math.Ceiling(whole.Height / Columns); tried < height; tried += Step)
        {
            if (Fill(column, tried) is { Rest: null } even)
            {
                return even;
            }
        }

        var full = Fill(column, height);
        return full.Marks.Count == 0
            ? Layout.Fit.Nothing(this, FormattableString.Invariant($"Columns have no room in {height:0} mm of height."))
            : full.Rest is null ? full : full with { Rest = this with { Inner = (Stack)full.Rest } };
    }

    private Fit Fill(double column, double height)
    {
        var (marks, bookmarks, tallest) = (new List<Primitive>(), new List<Bookmark>(), 0.0);
        Stack? rest = Inner;
        for (var i = 0; i < Columns && rest is not null; i++)
        {
            var fit = rest.Fit(column, height);
            if (fit.Problem is not null)
            {
                break;
            }

            var left = i * (column + Gap);
            marks.AddRange(fit.Marks.Under(Similarity.Shift(left, 0)));
            bookmarks.AddRange(fit.Bookmarks);
            tallest = Math.Max(tallest, fit.Height);
            rest = (Stack?)fit.Rest;
        }

        return new Fit(tallest, marks) { Bookmarks = bookmarks, Rest = rest };
    }
}
