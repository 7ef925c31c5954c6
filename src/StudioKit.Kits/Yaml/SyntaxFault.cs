namespace StudioKit.Kits.Yaml;

/// <summary>Puts the parser's complaints into a sentence for a photographer.</summary>
internal static class SyntaxFault
{
    public static string InOurWords(string complaint)
    {
        var words = complaint.Trim();
        return words switch
        {
            _ when HasStrayColon(words) => "a colon and a space inside a value.",
            _ when Has(words, "block end") || Has(words, "block mapping") || Has(words, "block collection") => "the indentation does not fit the lines above.",
            _ when Has(words, "']'") || Has(words, "flow sequence") => "a '[' is not closed by ']', or a comma is missing.",
            _ when Has(words, "'}'") || Has(words, "flow mapping") => "a '{' is not closed by '}', or a comma is missing.",
            _ when Has(words, "quoted scalar") => "a quotation mark is not closed.",
            _ when Has(words, "simple key") || Has(words, "expected ':'") => "a key without its colon.",
            _ when Has(words, "cannot start any token") => "a character that cannot start a value.",
            _ when Has(words, "escape") => "an unknown escape after a backslash.",
            _ => "it cannot be read here.",
        };
    }

    /// <summary>A guess at the slip behind a broken line.</summary>
    public static string Hint(string complaint, string line)
    {
        if (HasStrayColon(complaint))
        {
            return "Put the value between quotation marks, or check the indentation of the line before.";
        }

        var value = line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].TrimStart(' ', '-');
        return (value.Length > 0 ? value[0] : ' ') switch
        {
            '"' or '\'' => "End the value with the same quotation mark, and put nothing after it.",
            '@' or '%' or '`' or '&' or '*' or '!' or '|' or '>' or ',' => "Put the value between quotation marks.",
            _ => "Check the indentation and the colons on this line and the one before it.",
        };
    }

    private static bool HasStrayColon(string words) => Has(words, "mapping values are not allowed") || Has(words, "invalid mapping");

    private static bool Has(string words, string piece) => words.Contains(piece, StringComparison.OrdinalIgnoreCase);
}
