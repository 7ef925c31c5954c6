using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Pdf;

/// <summary>Tells which letters of a document are printed as a sign for a missing letter.</summary>
internal static class MissingLetters
{
    /// <summary>One sentence for a document, none where all letters are printed.</summary>
    public static IReadOnlyList<string> In(PagedDocument document)
    {
        var missing = document.Pages.SelectMany(page => page.Marks).Select(TextOf).SelectMany(PrintableText.Missing).Distinct().ToList();
        return missing.Count == 0
            ? []
            : [$"No bundled font prints {string.Join(", ", missing.Select(PrintableText.Name))}; {TextMeter.Replacement} stands in the place of each."];
    }

    private static string TextOf(Primitive mark) => mark switch
    {
        Label label => label.Text,
        Dimension dimension => dimension.Text,
        _ => "",
    };
}
