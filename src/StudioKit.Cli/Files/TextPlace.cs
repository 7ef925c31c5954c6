using System.Globalization;

namespace StudioKit.Cli.Files;

/// <summary>A place in a text as an editor shows it, e.g. <c>12:9</c>.</summary>
/// <param name="Line">The line, from 1.</param>
/// <param name="Column">The column, from 1.</param>
internal readonly record struct TextPlace(int Line, int Column)
{
    /// <summary>Reads a place.</summary>
    public static bool TryRead(string text, out TextPlace value, out string problem)
    {
        var parts = text.Split(':');
        var isGood = parts.Length == 2 & TryCount(parts[0], out var line) & TryCount(parts[^1], out var column);
        value = new TextPlace(line, column);
        problem = isGood ? "" : $"'{text}' is no place in a text; write line and column, both from 1, for example 12:9.";
        return isGood;
    }

    private static bool TryCount(string text, out int count) => int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out count) && count > 0;
}
