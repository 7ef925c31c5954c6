namespace StudioKit.Kits.Text;

/// <summary>A file's name and text, from which diagnostics cut their excerpts.</summary>
internal sealed record SourceText(string File, string Text)
{
    private string[]? _lines;

    /// <summary>A line counted from 1; empty beyond the end.</summary>
    public string Line(int number)
    {
        _lines ??= Text.Split('\n');
        return number >= 1 && number <= _lines.Length ? _lines[number - 1].TrimEnd('\r') : "";
    }
}
