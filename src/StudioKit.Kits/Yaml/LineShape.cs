using StudioKit.Kits.Text;

namespace StudioKit.Kits.Yaml;

/// <summary>Looks over the lines of a file before it is parsed, for slips that the parser explains badly and for lines that would cost it time.</summary>
internal static class LineShape
{
    /// <summary>Whether the lines can go to the parser; what stands in the way is reported.</summary>
    public static bool IsReadable(SourceText source, DiagnosticList diagnostics)
    {
        var number = 0;
        foreach (var line in source.Text.AsSpan().EnumerateLines())
        {
            number++;
            if (number > KitLimits.Lines)
            {
                diagnostics.Error(DiagnosticCodes.TooMuch, source, number, 1, "The file has too many lines.", $"It may have at most {KitLimits.Lines} lines.");
                return false;
            }

            if (line.Length > KitLimits.LineLength)
            {
                diagnostics.Error(DiagnosticCodes.TooMuch, source, number, 1, "The line is too long.", $"A line has at most {KitLimits.LineLength} characters.");
                return false;
            }

            if (TabInIndent(line) is { } column)
            {
                diagnostics.Error(DiagnosticCodes.Syntax, source, number, column, "The line is indented with a tab.", "Indent with spaces, two for each level.");
                return false;
            }
        }

        return true;
    }

    private static int? TabInIndent(ReadOnlySpan<char> line)
    {
        var indent = line[..^line.TrimStart(" \t").Length];
        var tab = indent.IndexOf('\t');
        return tab >= 0 && indent.Length < line.Length && line[indent.Length] != '#' ? tab + 1 : null;
    }
}
