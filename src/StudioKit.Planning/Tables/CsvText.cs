using System.Globalization;
using System.Text;
using StudioKit.Physics.Sources;

namespace StudioKit.Planning.Tables;

/// <summary>Comma-separated text with quoted fields: the one reader and the one writer of it.</summary>
public static class CsvText
{
    /// <summary>Splits it into rows of fields; rows that are empty all along are left out.</summary>
    /// <param name="text">The text; a byte order mark at its start is passed over.</param>
    /// <returns>Every row with its fields; a quotation mark that is never closed ends with the text.</returns>
    /// <remarks>Blanks around a field are passed over, since people type them and spreadsheets add them; inside quotation marks they count.</remarks>
    [Source("Rfc4180", "section 2")]
    public static IReadOnlyList<IReadOnlyList<CsvField>> Read(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        var rows = new List<IReadOnlyList<CsvField>>();
        var scan = new Scan(text);
        while (!scan.AtEnd)
        {
            var row = new List<CsvField>();
            do
            {
                row.Add(scan.Field());
            }
            while (scan.Skip(','));
            scan.EndLine();
            if (row.Exists(field => field.Text.Length > 0))
            {
                rows.Add(row);
            }
        }

        return rows;
    }

    /// <summary>Writes one row of a table for a spreadsheet, quoted where it must be and ended as the standard has it.</summary>
    /// <param name="fields">The fields; one that a spreadsheet would take for a formula gets an apostrophe before it, which makes it text. Numbers stay numbers.</param>
    [Source("Rfc4180", "section 2")]
    public static string Row(params string[] fields) => Write([fields.Select(AsText)], "\r\n");

    /// <summary>Writes rows, quoted where they must be.</summary>
    /// <param name="rows">The rows, each with its fields.</param>
    /// <param name="lineEnd">What ends each row.</param>
    [Source("Rfc4180", "section 2")]
    public static string Write(IEnumerable<IEnumerable<string>> rows, string lineEnd)
    {
        ArgumentNullException.ThrowIfNull(rows);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        foreach (var row in rows)
        {
            Write(text, row, lineEnd);
        }

        return text.ToString();
    }

    /// <summary>Writes one row, quoted where it must be, so that a long table is never held whole.</summary>
    /// <param name="output">Where it goes.</param>
    /// <param name="row">Its fields.</param>
    /// <param name="lineEnd">What ends it.</param>
    [Source("Rfc4180", "section 2")]
    public static void Write(TextWriter output, IEnumerable<string> row, string lineEnd)
    {
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(row);
        var isFirst = true;
        foreach (var field in row)
        {
            if (!isFirst)
            {
                output.Write(',');
            }

            output.Write(Quoted(field));
            isFirst = false;
        }

        output.Write(lineEnd);
    }

    // A cell that begins so is worked out when the table is opened, and may then do what its writer likes (published advice on such "CSV injection",
    // from memory: = + - @, tab and carriage return; blanks before them are trimmed by some programs).
    private static string AsText(string field)
    {
        var start = field.AsSpan().TrimStart(' ');
        return start.Length > 0 && start[0] is '=' or '+' or '-' or '@' or '\t' or '\r' && !IsNumber(field) ? "'" + field : field;
    }

    private static bool IsNumber(string field) =>
        double.TryParse(field, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number);

    // Outer blanks must come back as they went.
    private static string Quoted(string field) => field.AsSpan().ContainsAny(",\"\r\n") || field.AsSpan().Trim().Length < field.Length
        ? $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
        : field;

    /// <summary>A place in the text.</summary>
    private sealed class Scan(string text)
    {
        // A byte order mark at the start belongs to the encoding, not to the first field.
        private int _at = text.StartsWith('\uFEFF') ? 1 : 0;
        private int _line = 1;
        private int _lineStart = text.StartsWith('\uFEFF') ? 1 : 0;

        public bool AtEnd => _at >= text.Length;

        public bool Skip(char expected)
        {
            var there = !AtEnd && text[_at] == expected;
            _at += there ? 1 : 0;
            return there;
        }

        public void EndLine()
        {
            var ended = Skip('\r');
            if (Skip('\n') || ended)
            {
                _line++;
                _lineStart = _at;
            }
        }

        public CsvField Field()
        {
            while (!AtEnd && text[_at] is ' ' or '\t')
            {
                _at++;
            }

            var (line, column) = (_line, _at - _lineStart + 1);
            var quoted = Skip('"') ? Quoted() : "";
            var start = _at;
            while (!AtEnd && text[_at] is not (',' or '\r' or '\n'))
            {
                _at++;
            }

            return new CsvField(quoted + text[start.._at].Trim(), line, column);
        }

        private string Quoted()
        {
            var field = new StringBuilder();
            for (; !AtEnd; _at++)
            {
                if (text[_at] == '"')
                {
                    _at++;
                    if (AtEnd || text[_at] != '"')
                    {
                        break;
                    }
                }

                field.Append(text[_at]);
                if (text[_at] == '\n')
                {
                    _line++;
                    _lineStart = _at + 1;
                }
            }

            return field.ToString();
        }
    }
}
