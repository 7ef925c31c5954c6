namespace StudioKit.Cli.Tables;

/// <summary>Two columns of plain text, with sentences below.</summary>
internal static class TextLines
{
    public static string Of(IReadOnlyList<(string Label, string Value)> lines, IReadOnlyList<string> notes)
    {
        var width = lines.Max(line => line.Label.Length) + 2;
        var rows = lines.Select(line => line.Label.PadRight(width) + line.Value);
        return string.Join(Environment.NewLine, notes.Count == 0 ? rows : rows.Append("").Concat(notes));
    }
}
