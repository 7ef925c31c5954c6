using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Pdf;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;

namespace StudioKit.Sheets.Tests;

/// <summary>Prints test pages and reads them back with a PDF reader that is not ours.</summary>
internal static class Pages
{
    public const double PointsPerMillimetre = 72 / 25.4;

    public static Stamp Stamp { get; } = new("Fen kit", "4f3a90c1", new DateOnly(2026, 5, 17));

    public static PagedDocument Single(params Primitive[] marks) =>
        new("Test page", new DateOnly(2026, 5, 17), [new StudioKit.Sheets.Layout.Page(210, 297, marks)]);

    public static LaidDocument Lay(params Block[] blocks) =>
        Paginator.Lay(new SheetDocument("Test sheet", Stamp, new PageSetup(Paper.A4), blocks));

    public static PdfDocument Read(PagedDocument document) => PdfDocument.Open(PdfWriter.Write(document));

    public static IReadOnlyList<string> Words(UglyToad.PdfPig.Content.Page page) => [.. page.GetWords().Select(word => word.Text)];

    /// <summary>Text of all labels of a page, as data.</summary>
    public static IReadOnlyList<string> Labels(StudioKit.Sheets.Layout.Page page) =>
        [.. page.Marks.OfType<Label>().Select(label => label.Text)];

    public static Word WordOf(UglyToad.PdfPig.Content.Page page, string text) => page.GetWords().Single(word => word.Text == text);
}
