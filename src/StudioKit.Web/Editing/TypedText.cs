namespace StudioKit.Web.Editing;

/// <summary>Takes a text back from a field of the browser, which knows line feeds only; lines that were not touched keep the ends they had.</summary>
public static class TypedText
{
    /// <summary>The text with what was typed.</summary>
    /// <param name="text">The text before.</param>
    /// <param name="typed">All of it as it now stands in the field.</param>
    public static string Into(string text, string typed)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(typed);
        if (!text.Contains('\r', StringComparison.Ordinal))
        {
            return typed;
        }

        var before = Lines(text);
        var now = typed.Split('\n');
        var most = Math.Min(before.Count, now.Length);
        var head = Enumerable.Range(0, most).TakeWhile(line => before[line].Content == now[line]).Count();
        var tail = Enumerable.Range(1, most - head).TakeWhile(line => before[^line].Content == now[^line]).Count();
        var ends = before[..head].Concat(now[head..^tail].Select(line => (line, ""))).Concat(before[^tail..]).Select(line => line.Item2).ToList();
        return string.Concat(now.Select((line, place) => line + (place == now.Length - 1 ? "" : ends[place].Length > 0 ? ends[place] : before[0].End)));
    }

    private static List<(string Content, string End)> Lines(string text)
    {
        var lines = new List<(string, string)>();
        var start = 0;
        for (var at = text.AsSpan().IndexOfAny('\r', '\n'); at >= 0; at = text.AsSpan(start).IndexOfAny('\r', '\n'))
        {
            var length = text.AsSpan(start + at).StartsWith("\r\n", StringComparison.Ordinal) ? 2 : 1;
            lines.Add((text.Substring(start, at), text.Substring(start + at, length)));
            start += at + length;
        }

        lines.Add((text[start..], ""));
        return lines;
    }
}
