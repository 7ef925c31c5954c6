using System.Globalization;
using System.Text;

namespace StudioKit.Kits;

/// <summary>One thing wrong with a kit file, and where.</summary>
/// <param name="Code">One of <see cref="DiagnosticCodes"/>.</param>
/// <param name="Severity">How much it matters.</param>
/// <param name="File">File as it was named to the reader, or the part's place in the parts library.</param>
/// <param name="Line">Line, counted from 1.</param>
/// <param name="Column">Column in characters, counted from 1.</param>
/// <param name="Message">A sentence that says what is wrong.</param>
/// <param name="Hint">What would be accepted, or the nearest known name; none where the sentence says it all.</param>
/// <param name="SourceLine">The line of the file, for the excerpt.</param>
public sealed record Diagnostic(
    string Code, DiagnosticSeverity Severity, string File, int Line, int Column, string Message, string? Hint, string SourceLine)
{
    /// <summary>Where there is more to be had against it.</summary>
    public DiagnosticHelp Help { get; init; }

    // What fits on a terminal of 100 columns with the indent.
    private const int ExcerptWidth = 90;

    /// <summary>The diagnostic as a compiler prints it: place and sentence, the source line, a caret under the column, the hint.</summary>
    /// <returns>Up to four lines, joined by line feeds; characters that could steer a terminal are shown as <c>·</c>.</returns>
    public string Format()
    {
        var severity = Severity == DiagnosticSeverity.Error ? "error" : "warning";
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"{Printable(File)}({Line},{Column}): {severity} {Code}: {Printable(Message)}");
        var start = Math.Clamp(Column - 1 - (ExcerptWidth * 2 / 3), 0, Math.Max(0, SourceLine.Length - ExcerptWidth));
        var excerpt = SourceLine.Substring(start, Math.Min(ExcerptWidth, SourceLine.Length - start));
        if (excerpt.Trim().Length > 0)
        {
            text.Append("\n    ").Append(Printable(excerpt)).Append("\n    ").Append(' ', Math.Clamp(Column - 1 - start, 0, ExcerptWidth)).Append('^');
        }

        return Hint is null ? text.ToString() : text.Append("\n    hint: ").Append(Printable(Hint)).ToString();
    }

    private static string Printable(string text) =>
        text.Any(char.IsControl) ? string.Concat(text.Select(letter => letter == '\t' ? ' ' : char.IsControl(letter) ? '·' : letter)) : text;
}
