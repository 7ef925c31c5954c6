using System.Buffers;
using System.Globalization;
using System.Text;

namespace StudioKit.Cli.Running;

/// <summary>Shows characters that would steer a terminal, or turn the order of what is read, in place of obeying them.</summary>
/// <remarks>
/// Names and labels come from files, and files come from anywhere. Control characters (ISO/IEC 6429), bidirectional controls (Unicode Standard Annex 9),
/// separators and invisible marks are written as \u202E is here, which is also how JSON writes them, so that a JSON document stays the same document.
/// </remarks>
internal static class HarmlessText
{
    // Joiners are letters of some scripts and stay; all other invisible characters can hide something.
    private const int NonJoiner = 0x200C;
    private const int Joiner = 0x200D;

    // What nearly all of a text is, told at a glance: the printing characters of ASCII, line feeds and tabs.
    private static readonly SearchValues<char> Plain = SearchValues.Create([.. Enumerable.Range(' ', '~' - ' ' + 1).Select(code => (char)code), '\n', '\t']);

    /// <summary>The text with every harmful character shown.</summary>
    public static string Of(string text)
    {
        if (!text.AsSpan().ContainsAnyExcept(Plain) || !text.AsSpan().EnumerateRunes().Any(IsHarmful))
        {
            return text;
        }

        var shown = new StringBuilder(text.Length + 16);
        for (var (i, taken) = (0, 0); i < text.Length; i += taken)
        {
            Rune.DecodeFromUtf16(text.AsSpan(i), out var letter, out taken);
            if (IsLineEnd(text, i))
            {
                shown.Append('\r');
            }
            else
            {
                Append(shown, letter);
            }
        }

        return shown.ToString();
    }

    // A carriage return alone goes back to the line's start and hides it; before a line feed it is how comma-separated text ends a line (RFC 4180).
    private static bool IsLineEnd(string text, int i) => text[i] == '\r' && i + 1 < text.Length && text[i + 1] == '\n';

    private static bool Any(this SpanRuneEnumerator letters, Func<Rune, bool> isSought)
    {
        foreach (var letter in letters)
        {
            if (isSought(letter))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsHarmful(Rune letter) => letter.Value switch
    {
        '\n' or '\t' or NonJoiner or Joiner => false,
        _ => Rune.GetUnicodeCategory(letter) is UnicodeCategory.Control or UnicodeCategory.Format
            or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator or UnicodeCategory.Surrogate,
    };

    private static void Append(StringBuilder shown, Rune letter)
    {
        if (!IsHarmful(letter))
        {
            shown.Append(letter);
            return;
        }

        foreach (var unit in letter.ToString())
        {
            shown.Append(CultureInfo.InvariantCulture, $"\\u{(int)unit:X4}");
        }
    }
}
