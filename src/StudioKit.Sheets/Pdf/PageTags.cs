using PdfSharp.Pdf;
using PdfSharp.UniversalAccessibility;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Pdf;

/// <summary>Tags what is drawn, so that a screen reader finds headings and reads text in its order and nothing else.</summary>
/// <remarks>
/// A page is a section, a heading a heading of its level, any other line of text a paragraph of its own, and all that is no text an artifact.
/// Tables are read line by line: pages are marks, which no longer know of rows and cells.
/// </remarks>
internal sealed class PageTags(PdfDocument document)
{
    private readonly StructureBuilder _builder = UAManager.ForDocument(document).StructureBuilder;

    /// <summary>Draws a page's marks in order, each with its tag.</summary>
    public void Draw(Page page, IEnumerable<Primitive> marks, Action<Primitive> draw)
    {
        var levels = page.Bookmarks.GroupBy(bookmark => bookmark.Title).ToDictionary(same => same.Key, same => same.Min(bookmark => bookmark.Level), StringComparer.Ordinal);
        var inArtifact = false;
        _builder.BeginElement(PdfGroupingElementTag.Section);
        foreach (var mark in marks)
        {
            // Neighbouring artifacts are one.
            if (inArtifact && mark is Label)
            {
                _builder.End();
            }

            if (mark is Label label)
            {
                _builder.BeginElement(Tag(label, levels));
                draw(mark);
                _builder.End();
            }
            else
            {
                if (!inArtifact)
                {
                    _builder.BeginArtifact();
                }

                draw(mark);
            }

            inArtifact = mark is not Label;
        }

        if (inArtifact)
        {
            _builder.End();
        }

        _builder.End();
    }

    private static PdfBlockLevelElementTag Tag(Label label, Dictionary<string, int> levels) =>
        label.Weight == TextWeight.Bold && levels.TryGetValue(label.Text, out var level)
            ? level switch
            {
                1 => PdfBlockLevelElementTag.Heading1,
                2 => PdfBlockLevelElementTag.Heading2,
                _ => PdfBlockLevelElementTag.Heading3,
            }
            : PdfBlockLevelElementTag.Paragraph;
}
