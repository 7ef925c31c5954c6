using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Layout;

/// <summary>Shares the width of a page among the columns of a table.</summary>
internal static class ColumnWidths
{
    public const double Padding = 1.5;

    /// <summary>Widths that sum to the room given: as wide as the contents ask, narrower by wrapping words where they must.</summary>
    public static IReadOnlyList<double> Share(Table table, double width)
    {
        var count = table.Columns.Count;
        var wanted = new double[count];
        var least = new double[count];
        for (var i = 0; i < count; i++)
        {
            wanted[i] = Widest(table, i, TextMeter.Width);
            least[i] = Widest(table, i, TextWrap.WidestWord);
        }

        var spare = width - least.Sum();
        if (spare < 0)
        {
            return Narrowed(least, [.. Enumerable.Range(0, count).Select(i => Widest(table, i, TextWrap.WidestPiece))], width);
        }

        return width >= wanted.Sum()
            ? Stretch(table, wanted, width - wanted.Sum())
            : Even(wanted, least, spare);
    }

    // Words are broken at their hyphens first, then anywhere in the widest columns: what is narrow, as numbers are, stays whole.
    private static double[] Narrowed(double[] words, double[] pieces, double width)
    {
        if (pieces.Sum() <= width)
        {
            return Even(words, pieces, width - pieces.Sum());
        }

        var widths = new double[pieces.Length];
        var (left, columns) = (width, pieces.Length);
        foreach (var i in Enumerable.Range(0, pieces.Length).OrderBy(i => pieces[i]))
        {
            widths[i] = Math.Min(pieces[i], left / columns);
            left -= widths[i];
            columns--;
        }

        return widths;
    }

    // All get the same on top of their least, save who wants less: a short column is not wrapped for the sake of a long one.
    private static double[] Even(double[] wanted, double[] least, double spare)
    {
        var widths = new double[wanted.Length];
        var left = wanted.Length;
        foreach (var i in Enumerable.Range(0, wanted.Length).OrderBy(i => wanted[i] - least[i]))
        {
            var more = Math.Min(wanted[i] - least[i], spare / left);
            widths[i] = least[i] + more;
            spare -= more;
            left--;
        }

        return widths;
    }

    // Width to spare goes to the columns of words; a table of numbers alone stays narrow.
    private static double[] Stretch(Table table, double[] wanted, double spare)
    {
        var words = wanted.Where((_, i) => table.Columns[i].Kind == ColumnKind.Text).Sum();
        return [.. wanted.Select((column, i) =>
            table.Columns[i].Kind == ColumnKind.Text ? column + (spare * column / words) : column)];
    }

    private static double Widest(Table table, int column, Func<string, double, TextWeight, double> measure)
    {
        if (table.Columns[column].Kind == ColumnKind.TickBox)
        {
            return Math.Max(TextWrap.WidestWord(table.Columns[column].Title, table.SizePt, TextWeight.Bold), TypeScale.LineHeight(table.SizePt))
                + (2 * Padding);
        }

        // Heads may always wrap, the cells of words only; numbers never part from their units.
        var cells = table.Columns[column].Kind == ColumnKind.Text ? measure : TextMeter.Width;
        var widest = measure(table.Columns[column].Title, table.SizePt, TextWeight.Bold);
        foreach (var row in table.Rows)
        {
            widest = Math.Max(widest, cells(row.Cells[column], table.SizePt, row.Total ? TextWeight.Bold : TextWeight.Regular));
        }

        return Math.Max(widest, DecimalAlignment.Of(table, column).Width) + (2 * Padding);
    }
}
