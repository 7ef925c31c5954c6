using StudioKit.Kits.Editing;

namespace StudioKit.Kits.Completing;

/// <summary>The keys that stand as far in as the line at hand, in the same section.</summary>
internal static class Siblings
{
    /// <param name="text">The text.</param>
    /// <param name="lines">Its lines.</param>
    /// <param name="line">The line at hand, whose own key does not count.</param>
    /// <param name="column">Blanks before the section's keys.</param>
    /// <param name="isFirst">Whether a hyphen begins the section on this very line.</param>
    public static IEnumerable<(int Start, string Key)> Of(string text, LineMap lines, int line, int column, bool isFirst)
    {
        for (var up = line - 1; up >= 0 && !isFirst; up--)
        {
            if (Content(text, lines, up) is not { } at)
            {
                continue;
            }

            if (At(text, lines, up, column) is { } key)
            {
                yield return key;
            }

            if (at < column)
            {
                break;
            }
        }

        for (var down = line + 1; down < lines.Count; down++)
        {
            if (Content(text, lines, down) is not { } at)
            {
                continue;
            }

            if (at < column)
            {
                break;
            }

            if (At(text, lines, down, column) is { } key)
            {
                yield return key;
            }
        }
    }

    // Blanks before what a line says; none where it says nothing.
    private static int? Content(string text, LineMap lines, int line) =>
        lines.IsBlank(line) || text[lines.Start(line) + lines.Indent(line)] == '#' ? null : lines.Indent(line);

    private static (int Start, string Key)? At(string text, LineMap lines, int line, int column)
    {
        var (start, end) = (lines.Start(line), lines.End(line));
        var at = start + lines.Indent(line);
        while (at - start < column && LooseLine.IsDash(text, at, end))
        {
            at = LooseLine.Skip(text, at + 1, end);
        }

        return at - start == column && !LooseLine.IsDash(text, at, end) && LooseLine.Colon(text, at, end) is { } colon ? (at, LooseLine.Plain(text.AsSpan(at, colon - at))) : null;
    }
}
