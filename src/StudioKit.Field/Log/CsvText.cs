using System.Text;

namespace StudioKit.Field.Log;

/// <summary>Comma-separated text after RFC 4180, with line feeds as line ends.</summary>
internal static class CsvText
{
    public static string Write(IEnumerable<IEnumerable<string>> rows)
    {
        var text = new StringBuilder();
        foreach (var row in rows)
        {
            text.AppendJoin(',', row.Select(Quoted)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>Reads rows; a quotation mark that is never closed ends with the text.</summary>
    public static List<string[]> Read(string text)
    {
        var (rows, row, field) = (new List<string[]>(), new List<string>(), new StringBuilder());
        var quoted = false;
        for (var i = 0; i < text.Length; i++)
        {
            var c = text[i];
            if (quoted && c == '"' && i + 1 < text.Length && text[i + 1] == '"')
            {
                field.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (quoted || c is not (',' or '\n' or '\r'))
            {
                field.Append(c);
            }
            else if (c != '\r')
            {
                row.Add(field.ToString());
                field.Clear();
                EndRow(c == '\n');
            }
        }

        if (field.Length > 0 || row.Count > 0)
        {
            row.Add(field.ToString());
            EndRow(true);
        }

        return rows;

        void EndRow(bool ends)
        {
            if (ends)
            {
                rows.Add([.. row]);
                row.Clear();
            }
        }
    }

    // Always quoted where in doubt: a leading space or an empty first field must come back as it went.
    private static string Quoted(string field) =>
        field.AsSpan().IndexOfAny("\",\n\r") >= 0 || field.StartsWith(' ') || field.EndsWith(' ')
            ? $"\"{field.Replace("\"", "\"\"", StringComparison.Ordinal)}\""
            : field;
}
