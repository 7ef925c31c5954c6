using System.Globalization;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Tagging;

namespace StudioKit.Sheets.Pdf;

/// <summary>Draws a page's marks in order, what belongs together between two marks of the content stream (ISO 32000-1, 14.6).</summary>
internal static class PageMarks
{
    /// <summary>Draws a page.</summary>
    /// <param name="page">The page as data.</param>
    /// <param name="canvas">What it is drawn on.</param>
    /// <param name="structure">The document's structure, at this page.</param>
    public static void Draw(Page page, PdfCanvas canvas, PdfStructure structure)
    {
        var figures = new Dictionary<Tag, Bounds>(ReferenceEqualityComparer.Instance);
        var open = (Tag?)null;
        foreach (var mark in new Drawing("", "", page.Marks).PlainMarks())
        {
            var tag = TagOf(mark);
            if (tag != open)
            {
                Close(canvas, open);
                canvas.Mark(Opening(tag, structure));
                open = tag;
            }

            canvas.Draw(mark);
            if (tag.Kind == TagKind.Figure)
            {
                figures[tag] = figures.TryGetValue(tag, out var covered) ? covered.With(mark.Bounds) : mark.Bounds;
            }
        }

        Close(canvas, open);
        foreach (var (figure, covered) in figures)
        {
            structure.Place(figure, covered, page.HeightMm);
        }
    }

    // Where nobody said what a mark is, text is read and a picture described; all else is ornament.
    private static Tag TagOf(Primitive mark) => mark.Tag ?? mark switch
    {
        Label => new Tag(TagKind.Paragraph),
        Picture picture => new Tag(TagKind.Figure) { Says = picture.Description },
        _ => Tag.Ornament,
    };

    private static void Close(PdfCanvas canvas, Tag? open)
    {
        if (open is not null)
        {
            canvas.Mark("EMC\n");
        }
    }

    private static string Opening(Tag tag, PdfStructure structure) => tag.Kind switch
    {
        TagKind.Ornament => "/Artifact <</Type/Layout>> BDC\n",
        TagKind.Header => "/Artifact <</Type/Pagination/Subtype/Header>> BDC\n",
        TagKind.Footer => "/Artifact <</Type/Pagination/Subtype/Footer>> BDC\n",
        TagKind.CutMark => "/Artifact <</Type/Page>> BDC\n",
        _ => string.Create(CultureInfo.InvariantCulture, $"/{PdfStructure.NameOf(tag)} <</MCID {structure.Add(tag)}>> BDC\n"),
    };
}
