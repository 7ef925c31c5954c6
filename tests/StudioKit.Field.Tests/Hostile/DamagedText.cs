using System.Globalization;

namespace StudioKit.Field.Tests.Hostile;

/// <summary>Texts as they come when a file is damaged, mistyped or meant ill.</summary>
internal static class DamagedText
{
    private static readonly string[] Tokens =
    [
        "NaN", ".nan", ".inf", "-1", "0", "1e300", "-1e300", "1e-320", "1e999", "999999999999999999999", "1/0", "0/0", "f/0", "f/-8", "f/1e300", "EV 990", "EV -990", "1e300 lx·s",
        "1e-300 m", "-5 m", "0 m", "1/1e9", "2/1", "ISO 0", "\0", "\u202Eabc", "\u001b[2J", "&a", "*a", "!!x", "{", "}", "[", "]", "- ", ": ", "\t", "\"", "'", ",", "\n", "\r", "#", "%", "@", "|", ">",
        "9999-99-99", "0000-00-00", "🦋", "\uD800", new string('9', 400), new string('[', 3000), new string('{', 3000), new string(',', 5000),
    ];

    /// <summary>How many a run draws: a hundred, or as many as STUDIOKIT_RANDOM_FILES says.</summary>
    public static int Runs { get; } = int.TryParse(Environment.GetEnvironmentVariable("STUDIOKIT_RANDOM_FILES"), CultureInfo.InvariantCulture, out var runs) ? runs : 100;

    /// <summary>A sound text with up to six damages.</summary>
    public static Gen<string> Of(string sound) =>
        from damages in Gen.Select(Gen.Int[0, 3], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Int[0, Tokens.Length - 1]).List[1, 6]
        select damages.Aggregate(sound, (text, damage) => Damaged(text, damage.Item1, damage.Item2, damage.Item3, Tokens[damage.Item4]));

    private static string Damaged(string text, int kind, double where, double length, string token)
    {
        var at = (int)(where * text.Length);
        var span = Math.Min(text.Length - at, (int)(length * 12));
        return kind switch
        {
            0 => text.Insert(at, token),
            1 => text.Remove(at, span),
            2 => Replaced(text, at, token),
            _ => text.Insert(at, text.Substring(at, span)),
        };
    }

    // A whole value gives way to the token, so that damage gets past the first look.
    private static string Replaced(string text, int at, string token)
    {
        var start = text.LastIndexOfAny([',', ' ', '\n', '{', ':'], Math.Max(0, at - 1)) + 1;
        var end = text.IndexOfAny([',', ' ', '\n', '}', ':'], start);
        return string.Concat(text.AsSpan(0, start), token, text.AsSpan(end < 0 ? text.Length : end));
    }
}
