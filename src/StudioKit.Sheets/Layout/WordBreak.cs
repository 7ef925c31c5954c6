using System.Globalization;

namespace StudioKit.Sheets.Layout;

/// <summary>Where a word may be broken that no line holds.</summary>
internal static class WordBreak
{
    private const string BreakBehind = "-_/\\.,:;+=&|)]}–—";

    /// <summary>Length of the part that stays on the line: up to the last place to break that fits, else to the last letter that fits, but between the digits of a number only where nothing else is left.</summary>
    /// <param name="word">The word, wider than the line.</param>
    /// <param name="fits">Whether a beginning of it fits.</param>
    public static int Length(string word, Func<string, bool> fits)
    {
        var ends = Ends(word);
        var count = 1;
        while (count < ends.Count && fits(word[..ends[count]]))
        {
            count++;
        }

        var inside = ends.Take(count).Where(end => end < word.Length).ToList();
        return inside.LastOrDefault(end => IsGoodBreak(word, end)) is > 0 and var good ? good
            : inside.LastOrDefault(end => !IsInNumber(word, end)) is > 0 and var fair ? fair
            : ends[count - 1];
    }

    /// <summary>The pieces of a word between the places where it is broken first.</summary>
    public static IEnumerable<string> Pieces(string word)
    {
        var start = 0;
        for (var end = 1; end < word.Length; end++)
        {
            if (IsGoodBreak(word, end))
            {
                yield return word[start..end];
                start = end;
            }
        }

        yield return word[start..];
    }

    /// <summary>A word as it is, or sign by sign where its script has no spaces, each with what stands before it on a line.</summary>
    public static IEnumerable<(string Word, string Gap)> Signs(string word)
    {
        var start = 0;
        for (var at = 1; at < word.Length; at++)
        {
            // What closes stays with the sign before it.
            if (IsSpaceless(word[at - 1]) && IsSpaceless(word[at]) && !IsClosing(word[at]) && !char.IsLowSurrogate(word[at]))
            {
                yield return (word[start..at], start == 0 ? " " : "");
                start = at;
            }
        }

        if (word.Length > 0)
        {
            yield return (word[start..], start == 0 ? " " : "");
        }
    }

    /// <summary>Whether the end of a line stands for a space: not where a word was broken at a hyphen or the like, nor in a script without spaces.</summary>
    public static bool EndsWord(string line) => line.Length > 0 && !"-_/\\".Contains(line[^1], StringComparison.Ordinal) && !IsSpaceless(line[^1]);

    private static List<int> Ends(string word)
    {
        var starts = StringInfo.ParseCombiningCharacters(word);
        return [.. starts.Skip(1), word.Length];
    }

    private static bool IsGoodBreak(string word, int end) =>
        BreakBehind.Contains(word[end - 1], StringComparison.Ordinal) && end >= 2 && end < word.Length && !IsInNumber(word, end) && !BreakBehind.Contains(word[end], StringComparison.Ordinal);

    // 1/6.4, 2026-05-17 and 0412-0419 are read as one; so is what stands between a number and its unit.
    private static bool IsInNumber(string word, int end) =>
        IsNumeral(word[end]) && (IsNumeral(word[end - 1]) || (end >= 2 && !char.IsLetter(word[end - 1]) && IsNumeral(word[end - 2])))
        || (IsNumeral(word[end - 1]) && end + 1 < word.Length && !char.IsLetter(word[end]) && IsNumeral(word[end + 1]))
        || word[end] == ' ' || word[end - 1] == ' ';

    private static bool IsNumeral(char letter) => char.IsDigit(letter);

    // Kana, ideographs and full-width signs (Unicode, blocks U+2E80 to U+9FFF without Hangul, U+F900 and U+FF00), and the halves of signs beyond them.
    private static bool IsSpaceless(char letter) =>
        letter is (>= '\u2e80' and <= '\u9fff') or (>= '\uf900' and <= '\ufaff') or (>= '\uff00' and <= '\uffef') || char.IsSurrogate(letter);

    private static bool IsClosing(char letter) => letter is '、' or '。' or '，' or '．' or '）' or '」' or '』' or '】' or '：' or '；' or '！' or '？' or 'ー' or '々';
}
