using PdfSharp.Drawing;
using PdfSharp.Pdf;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Pdf;

/// <summary>Writes finished pages as a PDF file, the same bytes for the same pages.</summary>
internal static class PdfWriter
{
    // A PDF that names no date of its own is given the moment of saving, so an undated sheet carries a date that nobody takes for real.
    private static readonly DateOnly Undated = new(1980, 1, 1);

    private const double PointsPerMillimetre = 72 / 25.4;

    /// <summary>Writes a document.</summary>
    /// <param name="paged">Its pages; the marks of each are asked for once.</param>
    /// <param name="missing">Where letters are noted that no bundled font prints; nowhere where left out.</param>
    public static byte[] Write(PagedDocument paged, MissingLetters? missing = null)
    {
        BundledFontResolver.Install();
        using var document = new PdfDocument();
        Describe(document, paged);
        var structure = new PdfStructure(document);
        var fonts = new Dictionary<(FontFace Face, double Size, bool Slanted), XFont>();
        var pages = new List<Page>();
        foreach (var page in paged.Pages)
        {
            AddPage(document, page, fonts, missing, structure);
            pages.Add(page with { Marks = [] });
        }

        if (pages.Exists(page => page.Bookmarks.Count > 0))
        {
            // PDFsharp leaves a hole in the file for an outline that is asked for and stays empty.
            AddOutline(document, pages);
        }

        AddLinks(document, pages, structure);
        using var stream = new MemoryStream();
        document.Save(stream, closeStream: false);
        var file = new ArraySegment<byte>(stream.GetBuffer(), 0, (int)stream.Length);
        StablePdf.Stabilise(file);
        return PackedPdf.Pack(file, structure);
    }

    private static void Describe(PdfDocument document, PagedDocument paged)
    {
        var date = (paged.Date ?? Undated).ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        document.Version = 17;
        document.Info.Title = paged.Title;
        document.Info.Creator = "StudioKit";
        document.Info.CreationDate = date;
        document.Info.ModificationDate = date;
        document.Language = paged.Language;
        Prefer(document.ViewerPreferences, paged.Sides);

        // Streams are compressed by us, see PackedPdf.
        document.Options.NoCompression = true;
        document.Options.CompressContentStreams = false;
    }

    // Sheets carry true sizes: a viewer is asked not to fit them to its paper. The keys are those of ISO 32000-1, table 150.
    private static void Prefer(PdfViewerPreferences preferences, PrintedSides sides)
    {
        preferences.DisplayDocTitle = true;
        preferences.Elements.SetName("/PrintScaling", "/None");
        preferences.Elements.SetName("/Duplex", sides switch
        {
            PrintedSides.BothOverLongEdge => "/DuplexFlipLongEdge",
            PrintedSides.BothOverShortEdge => "/DuplexFlipShortEdge",
            _ => "/Simplex",
        });
        preferences.Elements.SetBoolean("/PickTrayByPDFSize", true);
    }

    private static void AddPage(PdfDocument document, Page page, Dictionary<(FontFace Face, double Size, bool Slanted), XFont> fonts, MissingLetters? missing, PdfStructure structure)
    {
        var target = document.AddPage();
        target.Width = XUnit.FromMillimeter(page.WidthMm);
        target.Height = XUnit.FromMillimeter(page.HeightMm);
        structure.Begin(target);
        using (var canvas = new PdfCanvas(target, fonts, missing))
        {
            PageMarks.Draw(page, canvas, structure);
        }

        PackedPdf.PackContent(target);
    }

    private static void AddOutline(PdfDocument document, List<Page> pages)
    {
        var open = new List<(int Level, PdfOutlineCollection Children)> { (0, document.Outlines) };
        foreach (var (page, index) in pages.Select((page, index) => (page, index)))
        {
            foreach (var bookmark in page.Bookmarks)
            {
                open.RemoveAll(entry => entry.Level >= bookmark.Level);
                var outline = open[^1].Children.Add(bookmark.Title, document.Pages[index], opened: true);
                outline.Top = (page.HeightMm - bookmark.Y) * PointsPerMillimetre;
                open.Add((bookmark.Level, outline.Outlines));
            }
        }
    }

    private static void AddLinks(PdfDocument document, List<Page> pages, PdfStructure structure)
    {
        foreach (var (page, index) in pages.Select((page, index) => (page, index)))
        {
            foreach (var link in page.Links)
            {
                var area = new PdfRectangle(
                    new XPoint(link.Area.Left * PointsPerMillimetre, (page.HeightMm - link.Area.Bottom) * PointsPerMillimetre),
                    new XPoint(link.Area.Right * PointsPerMillimetre, (page.HeightMm - link.Area.Top) * PointsPerMillimetre));
                var annotation = document.Pages[index].AddDocumentLink(area, link.Page);

                // PDFsharp stamps each link with the machine's time and a random name; both are optional.
                annotation.Elements.Remove("/M");
                annotation.Elements.Remove("/NM");
                annotation.Elements.SetString("/Contents", FormattableString.Invariant($"To page {link.Page}"));
                if (link.Tag is { } tag)
                {
                    structure.Tie(annotation, document.Pages[index], tag);
                }
            }
        }
    }
}
