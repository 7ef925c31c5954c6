using StudioKit.Kits;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Cli.Files;

/// <summary>Finds what of a kit's own words the sheets cannot print.</summary>
internal static class UnprintedText
{
    private const string Hint = "The sheets print it as a sign for a missing letter. Latin, Greek and Cyrillic letters, ideographs, kana and Hangul are printed.";

    /// <summary>A warning for every value that holds such a letter.</summary>
    /// <param name="path">The kit's file, or the standard input.</param>
    /// <param name="read">What was read from it.</param>
    public static IReadOnlyList<Diagnostic> In(string path, KitReadResult read)
    {
        var values = read.Written.Where(entry => PrintableText.Missing(entry.Value).Count > 0).OrderBy(entry => entry.Key, StringComparer.Ordinal).ToList();
        if (values.Count == 0)
        {
            return [];
        }

        var lines = path == KitInput.StandardInput ? [] : InputFile.Read(path, File.ReadAllLines);
        return [.. values.Select(entry => Warning(path, lines, entry.Key, PrintableText.Missing(entry.Value))).OrderBy(warning => (warning.Line, warning.Column))];
    }

    private static Diagnostic Warning(string path, string[] lines, string key, IReadOnlyList<string> letters)
    {
        // What stands in a part beside the kit is told by its key alone.
        var line = Array.FindIndex(lines, text => letters.All(letter => text.Contains(letter, StringComparison.Ordinal)));
        var column = line < 0 ? 1 : lines[line].IndexOf(letters[0], StringComparison.Ordinal) + 1;
        return new Diagnostic(
            DiagnosticCodes.NotPrinted, DiagnosticSeverity.Warning, path == KitInput.StandardInput ? "standard input" : path, Math.Max(1, line + 1), column,
            $"No bundled font prints {string.Join(", ", letters.Select(PrintableText.Name))} in '{key}'.", Hint, line < 0 ? "" : lines[line]);
    }
}
