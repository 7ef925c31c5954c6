using System.Text;

namespace StudioKit.Kits.Editing;

/// <summary>Lines and columns of a text, counted from 1 as editors and diagnostics count them: a tab is one column, and neither a byte-order mark nor what ends a line is any.</summary>
public sealed class TextPlaces
{
    private readonly string _text;
    private readonly ColumnUnit _unit;
    private readonly LineMap _lines;

    /// <summary>Places of a text.</summary>
    /// <param name="text">The text, with whatever line ends it has.</param>
    /// <param name="unit">What columns are counted in.</param>
    /// <exception cref="ArgumentNullException">There is no text.</exception>
    public TextPlaces(string text, ColumnUnit unit = ColumnUnit.CodeUnits)
    {
        ArgumentNullException.ThrowIfNull(text);
        (_text, _unit, _lines) = (text, unit, new LineMap(text));
    }

    /// <summary>How many lines there are [1]; ≥ 1. What follows the last line end is one, too, if only an empty one.</summary>
    public int Lines => _lines.Count;

    /// <summary>The column behind the last character of a line [1]; ≥ 1.</summary>
    /// <param name="line">The line, 1 to <see cref="Lines"/> [1].</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such line.</exception>
    public int LastColumn(int line)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(line, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(line, Lines);
        return 1 + Count(_lines.Line(line - 1));
    }

    /// <summary>Where a line and a column are in the text.</summary>
    /// <param name="line">The line, from 1 [1].</param>
    /// <param name="column">The column, from 1 [1]; the one behind a line's last character is its last.</param>
    /// <returns>The offset in UTF-16 units from 0 [1]; none outside the text, and within a character.</returns>
    public int? Offset(int line, int column)
    {
        if (line < 1 || line > Lines || column < 1)
        {
            return null;
        }

        var (at, counted) = (_lines.Start(line - 1), 1);
        while (counted < column && at < _lines.End(line - 1))
        {
            Rune.DecodeFromUtf16(_text.AsSpan(at), out var letter, out var units);
            at += units;
            counted += Size(letter);
        }

        return counted == column ? at : null;
    }

    /// <summary>Line and column of a place.</summary>
    /// <param name="offset">The place, in UTF-16 units from 0 [1]; one within what ends a line counts as its end.</param>
    /// <exception cref="ArgumentOutOfRangeException">The place is outside the text.</exception>
    public (int Line, int Column) Of(int offset)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(offset);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(offset, _text.Length);
        var line = _lines.LineOf(offset);
        var start = _lines.Start(line);
        return (line + 1, 1 + Count(_text.AsSpan(start, Math.Max(0, Math.Min(offset, _lines.End(line)) - start))));
    }

    private int Count(ReadOnlySpan<char> text)
    {
        var count = 0;
        foreach (var letter in text.EnumerateRunes())
        {
            count += Size(letter);
        }

        return count;
    }

    private int Size(Rune letter) => _unit switch
    {
        ColumnUnit.Bytes => letter.Utf8SequenceLength,
        ColumnUnit.Characters => 1,
        _ => letter.Utf16SequenceLength,
    };
}
