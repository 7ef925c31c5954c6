namespace StudioKit.Kits.Yaml;

/// <summary>Puts the parser's complaints into a sentence for a photographer.</summary>
internal static class SyntaxFault
{
    public static string InOurWords(string complaint)
    {
        var words = complaint.Trim();
        return words switch
        {
            _ when Has(words, "mapping values are not allowed") => "a colon where none can be.",
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
    public static string Hint(string line)
    {
        var value = line[(line.IndexOf(':', StringComparison.Ordinal) + 1)..].TrimStart(' ', '-');
        return value.Length > 0 && value[0] is '@' or '%' or '`' or '&' or '*' or '!' or '|' or '>' or '"' or '\''
            ? "Put the value between quotation marks."
            : "Check the indentation and the colons on this line and the one before it.";
    }

    private static bool Has(string words, string piece) => words.Contains(piece, StringComparison.OrdinalIgnoreCase);
}
