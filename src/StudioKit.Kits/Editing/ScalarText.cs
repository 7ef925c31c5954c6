using System.Buffers;
using System.Text;

namespace StudioKit.Kits.Editing;

/// <summary>Writes a single value so that YAML reads it as it was meant, between quotation marks only where it needs them.</summary>
internal static class ScalarText
{
    private const string Indicators = "-?:,[]{}#&*!|>'\"%@`=";

    private static readonly SearchValues<char> NumberLetters = SearchValues.Create("0123456789abcdefxABCDEFX_.,:+-TZ ");

    private static readonly HashSet<string> OtherWords = new(StringComparer.OrdinalIgnoreCase)
    {
        "y", "n", "yes", "no", "on", "off", "true", "false", "null", "~", ".nan", ".inf", "+.inf", "-.inf", "<<", "=",
    };

    /// <summary>Whether a text can stand in a kit at all: on one line, without control characters and halves of characters.</summary>
    public static bool IsWritable(string text)
    {
        for (var i = 0; i < text.Length; i++)
        {
            if (char.IsControl(text[i]) || text[i] is '\u2028' or '\u2029' or '\uFEFF' or '\uFFFE' or '\uFFFF')
            {
                return false;
            }

            if (char.IsSurrogate(text[i]) && !char.IsSurrogatePair(text, i++))
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Writes a value.</summary>
    /// <param name="text">The value; writable, and neither empty nor with blanks around it.</param>
    /// <param name="isFlow">Whether it stands between brackets or braces.</param>
    /// <param name="isText">Whether its key takes words, so that a number or yes must not be taken for more than a word.</param>
    /// <param name="mark">Quotation mark of the value before; a blank where it had none.</param>
    public static string Write(string text, bool isFlow, bool isText, char mark = ' ') => mark switch
    {
        '"' => Double(text),
        '\'' => Single(text),
        _ when IsPlain(text, isFlow) && !(isText && MeansMore(text)) => text,
        _ when !text.Contains('"', StringComparison.Ordinal) && !text.Contains('\\', StringComparison.Ordinal) => Double(text),
        _ => Single(text),
    };

    private static bool IsPlain(string text, bool isFlow) =>
        text.Length > 0 && text.Trim() == text && text is not ("~" or "null" or "---" or "...") && StartsPlain(text, isFlow)
        && !text.Contains(": ", StringComparison.Ordinal) && !text.Contains(" #", StringComparison.Ordinal) && text[^1] != ':'
        && !(isFlow && text.AsSpan().ContainsAny(",[]{}"));

    // A hyphen, question mark or colon begins a plain value only where something other than a blank follows.
    private static bool StartsPlain(string text, bool isFlow) => !Indicators.Contains(text[0], StringComparison.Ordinal)
        || (text[0] is '-' or '?' or ':' && text.Length > 1 && text[1] != ' ' && !(isFlow && text[0] == ':'));

    // Other programs read these as a truth value, a number or a date; ours does not mind.
    private static bool MeansMore(string text) => OtherWords.Contains(text)
        || (text.AsSpan().ContainsAnyInRange('0', '9') && (char.IsAsciiDigit(text[0]) || text[0] is '+' or '-' or '.') && !text.AsSpan().ContainsAnyExcept(NumberLetters));

    private static string Single(string text) => $"'{text.Replace("'", "''", StringComparison.Ordinal)}'";

    private static string Double(string text) => new StringBuilder(text).Replace("\\", "\\\\").Replace("\"", "\\\"").Insert(0, '"').Append('"').ToString();
}
