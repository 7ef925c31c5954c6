using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Pdf;

/// <summary>Notes, while a document is written, which of its letters are printed as a sign for a missing letter.</summary>
internal sealed class MissingLetters
{
    private readonly List<string> _missing = [];

    /// <summary>One sentence for all that was noted, none where all letters are printed.</summary>
    public IReadOnlyList<string> Told => _missing.Count == 0
        ? []
        : [$"No bundled font prints {string.Join(", ", _missing.Select(PrintableText.Name))}; {TextMeter.Replacement} stands in the place of each."];

    /// <summary>Looks at a text that is printed.</summary>
    public void Note(string text) => _missing.AddRange(PrintableText.Missing(text).Where(letter => !_missing.Contains(letter)));
}
