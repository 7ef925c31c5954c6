using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Layout;

/// <summary>Breaks text into lines.</summary>
internal static class TextWrap
{
    private static readonly HashSet<string> Units = new(StringComparer.Ordinal)
    {
        "mm", "cm", "m", "µm", "in", "ft", "g", "kg", "oz", "lb", "s", "ms", "min", "h", "N", "lx", "Wh", "%", "stop", "stops", "EUR",
    };

    /// <summary>Lines no wider than the room; a word that is too long alone is broken where the room ends.</summary>
    public static IReadOnlyList<string> Lines(string text, double width, double sizePt, TextWeight weight)
    {
        var lines = new List<string>();
        foreach (var paragraph in text.Split('\n'))
        {
            var line = "";
            foreach (var word in Words(paragraph))
            {
                var longer = line.Length == 0 ? word : line + " " + word;
                if (Fits(longer, width, sizePt, weight))
                {
                    line = longer;
                    continue;
                }

                AddUnlessEmpty(lines, line);
                line = BreakWord(lines, word, width, sizePt, weight);
            }

            lines.Add(line);
        }

        return lines;
    }

    /// <summary>The text on one line, its end given up for an ellipsis where it is too wide.</summary>
    public static string Shortened(string text, double width, double sizePt, TextWeight weight)
    {
        var shortened = text;
        for (var length = text.Length; length > 0 && !Fits(shortened, width, sizePt, weight); length--)
        {
            shortened = text[..(length - 1)].TrimEnd() + "…";
        }

        return shortened;
    }

    /// <summary>Width of the widest word, which a column should have.</summary>
    public static double WidestWord(string text, double sizePt, TextWeight weight) =>
        text.Split('\n').SelectMany(Words).DefaultIfEmpty("").Max(word => TextMeter.Width(word, sizePt, weight));

    // A number and its unit are one word to the eye.
    private static IEnumerable<string> Words(string paragraph)
    {
        var word = "";
        foreach (var next in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var joined = word.Length > 0 && (char.IsAsciiDigit(word[^1]) || word.EndsWith(" N", StringComparison.Ordinal))
                && (Units.Contains(next.TrimEnd('.', ',', ';', ':', ')')) || IsFraction(next));
            if (!joined && word.Length > 0)
            {
                yield return word;
            }

            word = joined ? $"{word} {next}" : next;
        }

        if (word.Length > 0)
        {
            yield return word;
        }
    }

    // As in 1 2/3 stops.
    private static bool IsFraction(string word) =>
        word.Length >= 3 && char.IsAsciiDigit(word[0]) && word[1] == '/' && char.IsAsciiDigit(word[2]);

    private static string BreakWord(List<string> lines, string word, double width, double sizePt, TextWeight weight)
    {
        while (!Fits(word, width, sizePt, weight) && word.Length > 1)
        {
            var length = 1;
            while (length + 1 < word.Length && Fits(word[..(length + 1)], width, sizePt, weight))
            {
                length++;
            }

            lines.Add(word[..length]);
            word = word[length..];
        }

        return word;
    }

    // A millionth of a millimetre keeps text that was measured for its column from being broken by rounding.
    private static bool Fits(string text, double width, double sizePt, TextWeight weight) =>
        TextMeter.Width(text, sizePt, weight) <= width + 1e-6;

    private static void AddUnlessEmpty(List<string> lines, string line)
    {
        if (line.Length > 0)
        {
            lines.Add(line);
        }
    }
}
