using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Layout;

/// <summary>Sets the rows of one table.</summary>
internal sealed class TableSetter(
    IReadOnlyList<Column> columns, IReadOnlyList<double> widths, IReadOnlyList<DecimalAlignment> decimals, double sizePt, Tag table, bool goesOn)
{
    private const double Above = 0.7;
    private const double Below = 0.9;

    /// <summary>Least height of a row, whose cells then have edges [mm]; nought where rows are as high as their text.</summary>
    public double LeastRow { get; init; }

    private readonly double _lineHeight = TypeScale.LineHeight(sizePt);

    public Fit Head()
    {
        var row = Set([.. columns.Select(column => column.Title)], TextWeight.Bold, head: true);
        return row with { Marks = [.. row.Marks, Rule(row.Height, Stroke.Edge)] };
    }

    public Fit Row(TableRow row)
    {
        var set = Set(row.Cells, row.Total ? TextWeight.Bold : TextWeight.Regular, head: false);
        var height = Math.Max(set.Height, LeastRow);
        return set with { Height = height, Marks = [.. set.Marks, Rule(height, Hairline), .. LeastRow > 0 ? Edges(height) : []] };
    }

    /// <summary>How many lines of a cell a row of some height holds.</summary>
    public int LinesWithin(double height) => (int)Math.Floor((height - Above - Below) / _lineHeight);

    /// <summary>Splits a row after some lines of its cells.</summary>
    public (TableRow Upper, TableRow Lower) Split(TableRow row, int lines)
    {
        var weight = row.Total ? TextWeight.Bold : TextWeight.Regular;
        var cells = row.Cells.Select((cell, i) => Lines(cell, i, weight)).ToArray();
        return (
            row with { Cells = [.. cells.Select(cell => string.Join('\n', cell.Take(lines)))] },
            row with { Cells = [.. cells.Select(cell => string.Join('\n', cell.Skip(lines)))] });
    }

    private static Stroke Hairline => new(0.1);

    private Line Rule(double y, Stroke stroke) => new(new Point(0, y), new Point(widths.Sum(), y), stroke);

    private IEnumerable<Line> Edges(double height)
    {
        var x = 0.0;
        foreach (var width in widths.Prepend(0))
        {
            x += width;
            yield return new Line(new Point(x, 0), new Point(x, height), Hairline);
        }
    }

    private IReadOnlyList<string> Lines(string cell, int column, TextWeight weight) =>
        TextWrap.Lines(cell, widths[column] - (2 * ColumnWidths.Padding), sizePt, weight);

    private Fit Set(IReadOnlyList<string> cells, TextWeight weight, bool head)
    {
        // The head is read once; on later pages it is only seen.
        var row = head && goesOn ? null : Tag.Row(table, head ? TagKind.ColumnHead : TagKind.Cell, cells.Count);
        var marks = new List<Primitive>();
        var (x, tallest) = (0.0, 1);
        for (var i = 0; i < cells.Count; i++)
        {
            var lines = head || columns[i].Kind != ColumnKind.TickBox ? Lines(cells[i], i, weight) : [""];
            tallest = Math.Max(tallest, lines.Count);
            marks.AddRange(Cell(cells[i], lines, i, x, weight, head, row?.Parts[i] ?? Tag.Header));
            x += widths[i];
        }

        return new Fit(Above + (tallest * _lineHeight) + Below, marks);
    }

    private IEnumerable<Primitive> Cell(string cell, IReadOnlyList<string> lines, int column, double x, TextWeight weight, bool head, Tag tag)
    {
        var (left, right) = (x + ColumnWidths.Padding, x + widths[column] - ColumnWidths.Padding);
        return columns[column].Kind switch
        {
            _ when cell.Length == 0 => [],
            ColumnKind.TickBox when !head => [TickBox.At(left, _lineHeight, sizePt).Under(Similarity.Shift(0, Above)) with { Tag = new Tag(TagKind.Sign, tag) { Says = TickBox.InWords } }],
            ColumnKind.Decimal when !head && lines.Count == 1 => AtDecimalPoint(cell, decimals[column], right, weight, tag),
            ColumnKind.Right or ColumnKind.Decimal => TypeScale.Set(lines, right, sizePt, weight, TextAnchor.End, Above, tag),
            _ => TypeScale.Set(lines, left, sizePt, weight, top: Above, tag: tag),
        };
    }

    // One piece of text, so that it is read back as one; its decimal point comes to stand under the others by moving its start.
    private IEnumerable<Primitive> AtDecimalPoint(string cell, DecimalAlignment alignment, double right, TextWeight weight, Tag tag)
    {
        var before = Fonts.TextMeter.Width(cell[..DecimalAlignment.Split(cell)], sizePt, weight);
        return TypeScale.Set([cell], right - alignment.Behind - before, sizePt, weight, top: Above, tag: tag);
    }
}
