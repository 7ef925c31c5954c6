using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>A table that flows over pages, its head repeated on each; a row is split only where it is taller than a page.</summary>
internal sealed record Table(IReadOnlyList<Column> Columns, IReadOnlyList<TableRow> Rows, double SizePt = 9) : Block
{
    /// <summary>Least height of a row [mm]; more than its text takes where it is to be written in by hand.</summary>
    public double LeastRow { get; init; }

    /// <summary>Widths found for the whole table, so that its parts on later pages keep them.</summary>
    private IReadOnlyList<double>? Widths { get; init; }

    private IReadOnlyList<DecimalAlignment>? Decimals { get; init; }

    /// <summary>Which table this goes on; none where it is the beginning.</summary>
    private Tag? Begun { get; init; }

    public override Fit Fit(double width, double height)
    {
        var tag = Begun ?? new Tag(TagKind.Table);
        var fixedTable = WithWidths(width);
        var setter = fixedTable.Setter(tag);
        var head = setter.Head();
        var marks = new List<Primitive>(head.Marks);
        var y = head.Height;
        for (var i = 0; i < Rows.Count; i++)
        {
            var row = setter.Row(Rows[i]);
            if (y + row.Height > height)
            {
                var rest = fixedTable with { Rows = [.. Rows.Skip(i)], Begun = i > 0 ? tag : Begun };
                return i > 0
                    ? new Fit(y, marks) { Rest = rest }
                    : Layout.Fit.Nothing(rest, "The table has no room for its head and one row.");
            }

            marks.AddRange(row.Marks.Under(Similarity.Shift(0, y)));
            y += row.Height;
        }

        return new Fit(y, marks);
    }

    /// <inheritdoc/>
    public override Fit Force(double width, double height)
    {
        var tag = Begun ?? new Tag(TagKind.Table);
        var fixedTable = WithWidths(width);
        var setter = fixedTable.Setter(tag);
        var head = setter.Head();
        var lines = setter.LinesWithin(height - head.Height);
        if (lines < 1)
        {
            return Layout.Fit.Nothing(this, "The table's head leaves no room for a row.");
        }

        var (upper, lower) = setter.Split(Rows[0], lines);
        var row = setter.Row(upper);
        return new Fit(
            head.Height + row.Height, [.. head.Marks, .. row.Marks.Under(Similarity.Shift(0, head.Height))])
        {
            Rest = fixedTable with { Rows = [lower, .. Rows.Skip(1)], Begun = tag },
        };
    }

    private Table WithWidths(double width) => Widths is not null ? this : this with
    {
        Widths = ColumnWidths.Share(this, width),
        Decimals = [.. Columns.Select((_, i) => DecimalAlignment.Of(this, i))],
    };

    private TableSetter Setter(Tag tag) => new(Columns, Widths!, Decimals!, SizePt, tag, Begun is not null) { LeastRow = LeastRow };
}
