using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Layout;

/// <summary>Where the decimal points of a column stand: the widest part before and the widest part behind them.</summary>
internal readonly record struct DecimalAlignment(double Before, double Behind)
{
    public double Width => Before + Behind;

    public static DecimalAlignment Of(Table table, int column)
    {
        var (before, behind) = (0.0, 0.0);
        if (table.Columns[column].Kind != ColumnKind.Decimal)
        {
            return default;
        }

        foreach (var row in table.Rows)
        {
            var weight = row.Total ? TextWeight.Bold : TextWeight.Regular;
            var split = Split(row.Cells[column]);
            before = Math.Max(before, TextMeter.Width(row.Cells[column][..split], table.SizePt, weight));
            behind = Math.Max(behind, TextMeter.Width(row.Cells[column][split..], table.SizePt, weight));
        }

        return new DecimalAlignment(before, behind);
    }

    /// <summary>Where a cell is split: before the decimal point, or behind the first run of digits where it has none.</summary>
    public static int Split(string cell)
    {
        var digit = cell.AsSpan().IndexOfAnyInRange('0', '9');
        if (digit < 0)
        {
            return cell.Length;
        }

        var end = cell.AsSpan(digit).IndexOfAnyExceptInRange('0', '9');
        return end < 0 ? cell.Length : digit + end;
    }
}
