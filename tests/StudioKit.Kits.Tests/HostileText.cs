namespace StudioKit.Kits.Tests;

/// <summary>Texts as they come when a kit or template is damaged, mistyped or meant ill.</summary>
internal static class HostileText
{
    private static readonly string[] Pieces =
    [
        "NaN", ".inf", "-1", "0", "1e300", "1e-320", "1e999", "999999999999999999999", "1/0", "0/0", "f/0", "f/-8", "EV 990", "-5 m", "0 m", "1/1e9", "2/1", "ISO 0", "± 1e9 %", "± -1",
        "\0", "\u202E", "\u001b[2J", "&a", "*a", "<<: *a", "!!x", "{", "}", "[", "]", "- ", ": ", "? ", "\t", "\"", "'", ",", "\n", "\r", "\n  ", "#", "%", "@", "|", ">", "---", "...", "🦋",
        "part: ../../x", "part: opal-acrylic-3", "full frame", "best", "yes", "1,5", "0 mm x 0 mm", "10 km x 10 km", "½", "A6", "settings",
    ];

    private static readonly string[] Digits = ["0", "1", "9", "5", "00", "90", "0.1"];

    /// <summary>A sound text with up to six damages.</summary>
    public static Gen<string> Of(string sound) =>
        from damages in Gen.Select(Gen.Int[0, 4], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Int[0, Pieces.Length - 1]).List[1, 6]
        select damages.Aggregate(sound, (text, damage) => Damaged(text, damage.Item1, damage.Item2, damage.Item3, Pieces[damage.Item4]));

    /// <summary>A sound text in which some values are others of the same text, so that most of it stays sound.</summary>
    public static Gen<string> Shuffled(string sound)
    {
        var lines = sound.Split('\n');
        var values = lines.Where(line => line.Contains(": ", StringComparison.Ordinal)).Select(line => line[(line.IndexOf(": ", StringComparison.Ordinal) + 2)..]).ToArray();
        return from swaps in Gen.Select(Gen.Int[0, lines.Length - 1], Gen.Int[0, values.Length - 1]).List[1, 4]
               select string.Join('\n', swaps.Aggregate(lines, (all, swap) => [.. all.Select((line, at) => at == swap.Item1 ? WithValue(line, values[swap.Item2]) : line)]));
    }

    /// <summary>A sound text without up to three of its lines.</summary>
    public static Gen<string> Thinned(string sound)
    {
        var lines = sound.Split('\n');
        return from left in Gen.Int[0, lines.Length - 1].List[1, 3] select string.Join('\n', lines.Where((_, at) => !left.Contains(at)));
    }

    /// <summary>A sound text with up to four of its digits changed or doubled, so that sizes go to extremes and units stay.</summary>
    public static Gen<string> Redigited(string sound)
    {
        var digits = Enumerable.Range(0, sound.Length).Where(at => char.IsAsciiDigit(sound[at])).ToArray();
        return from changes in Gen.Select(Gen.Int[0, digits.Length - 1], Gen.Int[0, Digits.Length - 1].Select(at => Digits[at])).List[1, 4]
               select changes.OrderByDescending(change => change.Item1).DistinctBy(change => change.Item1)
                   .Aggregate(sound, (text, change) => string.Concat(text.AsSpan(0, digits[change.Item1]), change.Item2, text.AsSpan(digits[change.Item1] + 1)));
    }

    private static string WithValue(string line, string value)
    {
        var colon = line.IndexOf(": ", StringComparison.Ordinal);
        return colon < 0 ? line : line[..(colon + 2)] + value;
    }

    private static string Damaged(string text, int kind, double where, double length, string piece)
    {
        var at = (int)(where * text.Length);
        var span = Math.Min(text.Length - at, (int)(length * 12));
        return kind switch
        {
            0 => text.Insert(at, piece),
            1 => text.Remove(at, span),
            2 => Replaced(text, at, piece),
            3 => text.Insert(at, string.Concat(Enumerable.Repeat(piece, (int)(length * 400)))),
            _ => text.Insert(at, text.Substring(at, span)),
        };
    }

    // A whole value gives way to the piece, so that damage gets past the first look.
    private static string Replaced(string text, int at, string piece)
    {
        var start = text.LastIndexOfAny([',', '\n', '{', ':', '['], Math.Max(0, at - 1)) + 1;
        var end = text.IndexOfAny([',', '\n', '}', ']'], start);
        return string.Concat(text.AsSpan(0, start), " ", piece, text.AsSpan(end < 0 ? text.Length : end));
    }
}
