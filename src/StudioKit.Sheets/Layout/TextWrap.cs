using System.Globalization;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Layout;

/// <summary>Breaks text into lines.</summary>
internal static class TextWrap
{
    // Keeps text that was measured for its column from being broken by rounding [mm].
    private const double Play = 1e-6;

    private const int MostKnown = 2000;

    [ThreadStatic]
    private static Dictionary<(string Text, double Width, double SizePt, TextWeight Weight), List<string>>? _known;

    private static readonly HashSet<string> Units = new(StringComparer.Ordinal)
    {
        "mm", "cm", "m", "µm", "in", "ft", "g", "kg", "oz", "lb", "s", "ms", "min", "h", "N", "lx", "Wh", "%", "stop", "stops", "EUR",
    };

    /// <summary>Lines no wider than the room; a word that is too long alone is broken behind its last hyphen or the like that the room holds, else where the room ends.</summary>
    public static IReadOnlyList<string> Lines(string text, double width, double sizePt, TextWeight weight)
    {
        // A card is tried in many ways before one is taken, and most of its texts are broken alike in all of them.
        var known = _known ??= [];
        if (!known.TryGetValue((text, width, sizePt, weight), out var lines))
        {
            if (known.Count >= MostKnown)
            {
                known.Clear();
            }

            known.Add((text, width, sizePt, weight), lines = Broken(text, width, sizePt, weight));
        }

        return lines;
    }

    private static List<string> Broken(string text, double width, double sizePt, TextWeight weight)
    {
        var lines = new List<string>();
        var space = TextMeter.Width(" ", sizePt, weight);
        foreach (var paragraph in text.Split('\n'))
        {
            // Letters stand side by side without kerning, so that widths add up.
            var (line, filled) = ("", 0.0);
            foreach (var (word, gap) in Words(paragraph))
            {
                var (before, wide) = (line.Length == 0 ? 0 : filled + (gap.Length * space), TextMeter.Width(word, sizePt, weight));
                if (before + wide <= width + Play)
                {
                    (line, filled) = (line.Length == 0 ? word : line + gap + word, before + wide);
                    continue;
                }

                AddUnlessEmpty(lines, line);
                line = BreakWord(lines, word, width, sizePt, weight);
                filled = TextMeter.Width(line, sizePt, weight);
            }

            lines.Add(line);
        }

        return lines;
    }

    /// <summary>The text on one line, its end given up for an ellipsis where it is too wide.</summary>
    public static string Shortened(string text, double width, double sizePt, TextWeight weight)
    {
        var shortened = text;
        var ends = Fits(text, width, sizePt, weight) ? [] : StringInfo.ParseCombiningCharacters(text);
        for (var i = ends.Length - 1; i >= 0 && !Fits(shortened, width, sizePt, weight); i--)
        {
            shortened = text[..ends[i]].TrimEnd() + "…";
        }

        return shortened;
    }

    /// <summary>Width of the widest word, which a column should have.</summary>
    public static double WidestWord(string text, double sizePt, TextWeight weight) =>
        text.Split('\n').SelectMany(Words).Select(word => word.Word).DefaultIfEmpty("").Max(word => TextMeter.Width(word, sizePt, weight));

    /// <summary>Width of the widest piece that is best left whole: words are broken at hyphens before anything else is.</summary>
    public static double WidestPiece(string text, double sizePt, TextWeight weight) =>
        text.Split('\n').SelectMany(Words).SelectMany(word => WordBreak.Pieces(word.Word)).DefaultIfEmpty("").Max(piece => TextMeter.Width(piece, sizePt, weight));

    // A number and its unit are one word to the eye; scripts that are written without spaces may break between any two of their signs.
    private static IEnumerable<(string Word, string Gap)> Words(string paragraph)
    {
        var word = "";
        foreach (var next in paragraph.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var joined = word.Length > 0 && (char.IsAsciiDigit(word[^1]) || word.EndsWith(" N", StringComparison.Ordinal))
                && (Units.Contains(next.TrimEnd('.', ',', ';', ':', ')')) || IsFraction(next));
            if (!joined && word.Length > 0)
            {
                foreach (var part in WordBreak.Signs(word))
                {
                    yield return part;
                }
            }

            word = joined ? $"{word} {next}" : next;
        }

        foreach (var part in WordBreak.Signs(word))
        {
            yield return part;
        }
    }

    // As in 1 2/3 stops.
    private static bool IsFraction(string word) =>
        word.Length >= 3 && char.IsAsciiDigit(word[0]) && word[1] == '/' && char.IsAsciiDigit(word[2]);

    private static string BreakWord(List<string> lines, string word, double width, double sizePt, TextWeight weight)
    {
        while (!Fits(word, width, sizePt, weight) && WordBreak.Length(word, start => Fits(start, width, sizePt, weight)) is var length && length < word.Length)
        {
            lines.Add(word[..length]);
            word = word[length..];
        }

        return word;
    }

    private static bool Fits(string text, double width, double sizePt, TextWeight weight) =>
        TextMeter.Width(text, sizePt, weight) <= width + Play;

    private static void AddUnlessEmpty(List<string> lines, string line)
    {
        if (line.Length > 0)
        {
            lines.Add(line);
        }
    }
}
