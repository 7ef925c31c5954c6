namespace StudioKit.Field.Log.Rows;

/// <summary>Keeps spreadsheets from taking a cell for a formula: an apostrophe goes before it, which is taken off when the cell is read.</summary>
internal static class SpreadsheetGuard
{
    public static string On(string text) => text != "-" && (StartsFormula(text) || (text is ['\'', ..] && StartsFormula(text[1..]))) ? "'" + text : text;

    public static string Off(string text) => text is ['\'', ..] && StartsFormula(text[1..]) ? text[1..] : text;

    // Blanks before it are passed over by some programs.
    private static bool StartsFormula(string text) => text.TrimStart(' ') is ['=' or '+' or '-' or '@' or '\t' or '\r' or '\'', ..];
}
