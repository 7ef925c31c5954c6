using System.Text;
using StudioKit.Physics.Sources;

namespace StudioKit.Planning.Cutting.Tables;

/// <summary>Comma-separated text with quoted fields.</summary>
internal static class CsvText
{
    /// <summary>Splits it into rows of fields; empty rows are left out.</summary>
    [Source("Rfc4180", "section 2")]
    public static IReadOnlyList<IReadOnlyList<CsvField>> Rows(string text)
    {
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

    /// <summary>One row of a table, quoted where it must be.</summary>
    [Source("Rfc4180", "section 2")]
    public static string Row(params string[] fields) => string.Join(',', fields.Select(Quoted)) + "\r\n";

    private static string Quoted(string field) => field.AsSpan().ContainsAny(",\"\r\n")
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
            Skip('\r');
            if (Skip('\n'))
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

            // A carriage return alone is no line's end.
            if (!AtEnd && text[_at] == '\r' && (_at + 1 >= text.Length || text[_at + 1] != '\n'))
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
