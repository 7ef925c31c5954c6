using System.Text;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;
using StudioKit.Sheets.Layout;
using StudioKit.Sheets.Pdf;

namespace StudioKit.Sheets.Tests.Pdf;

public sealed class PdfWriterTests
{
    /// <remarks>ISO 32000-1, 8.3.2.3: one default user space unit is 1/72 in, so 100 mm are 283.4646 units.</remarks>
    [Fact]
    public void A_hundred_millimetres_drawn_are_a_hundred_millimetres_printed()
    {
        using var document = Pages.Read(Pages.Single(new Line(new Point(20, 40), new Point(120, 40), Stroke.Edge)));

        var path = document.GetPage(1).Paths.Single();
        var box = path.GetBoundingRectangle()!.Value;

        box.Width.Should().BeApproximately(283.4646, 0.1 * Pages.PointsPerMillimetre);
        box.Left.Should().BeApproximately(20 * Pages.PointsPerMillimetre, 0.01);
        box.Top.Should().BeApproximately((297 - 40) * Pages.PointsPerMillimetre, 0.01);
    }

    /// <remarks>ISO 216: A4 is 210 mm × 297 mm. A4 in points is 595.28 × 841.89.</remarks>
    [Fact]
    public void Paper_has_its_standard_size()
    {
        using var document = Pages.Read(Pages.Single());

        document.GetPage(1).Width.Should().BeApproximately(595.28, 0.01);
        document.GetPage(1).Height.Should().BeApproximately(841.89, 0.01);
    }

    [Fact]
    public void Text_stands_where_it_was_put_and_can_be_read_back()
    {
        using var document = Pages.Read(Pages.Single(
            new Label(new Point(30, 60), "Sundew", 12), new Label(new Point(105, 90), "Ω Ж é", 12, TextAnchor.Middle)));

        var page = document.GetPage(1);
        var word = Pages.WordOf(page, "Sundew");

        (word.Letters[0].StartBaseLine.X / Pages.PointsPerMillimetre).Should().BeApproximately(30, 0.01);
        (297 - (word.Letters[0].StartBaseLine.Y / Pages.PointsPerMillimetre)).Should().BeApproximately(60, 0.01);
        Pages.Words(page).Should().ContainInOrder("Ω", "Ж", "é");
    }

    [Fact]
    public void Every_font_is_embedded_as_a_subset()
    {
        using var document = Pages.Read(Pages.Single(
            new Label(new Point(30, 60), "Heath Ж", 12), new Label(new Point(30, 70), "Heath Ж", 12, Weight: TextWeight.Bold)));

        var names = document.GetPage(1).Letters.Select(letter => letter.FontName).Distinct().ToList();

        names.Should().HaveCount(4).And.OnlyContain(name => name!.Length > 7 && name[6] == '+');
    }

    [Fact]
    public void The_same_pages_give_the_same_bytes_whatever_was_printed_before()
    {
        var first = PdfWriter.Write(Busy());
        PdfWriter.Write(Pages.Single(new Label(new Point(10, 10), "another document Щ", 20)));

        PdfWriter.Write(Busy()).Should().Equal(first);
    }

    [Fact]
    public void The_only_date_in_the_file_is_the_one_given()
    {
        var text = Encoding.Latin1.GetString(PdfWriter.Write(Busy()));

        text.Should().Contain("D:20260517000000").And.Contain("2026-05-17T00:00:00");
        text.Split("D:2").Should().HaveCount(3, "there is one date of creation and one of change");
    }

    [Fact]
    public void Title_language_outline_and_links_are_set()
    {
        using var document = Pages.Read(Busy());

        document.Information.Title.Should().Be("Busy");
        document.Information.Author.Should().BeNull();
        document.Structure.Catalog.CatalogDictionary.Data["Lang"].ToString().Should().Contain("en");
        document.TryGetBookmarks(out var bookmarks).Should().BeTrue();
        bookmarks!.GetNodes().Select(node => (node.Title, node.Level)).Should().Equal(("One", 0), ("Inside", 1), ("Two", 0));
        document.GetPage(1).GetAnnotations().Should().ContainSingle();
    }

    /// <remarks>ISO 32000-1, table 150: what a viewer's print dialogue is to begin with.</remarks>
    [Theory]
    [InlineData(1, 210, "Simplex")]
    [InlineData(2, 210, "DuplexFlipLongEdge")]
    [InlineData(2, 297, "DuplexFlipShortEdge")]
    public void A_print_dialogue_begins_at_full_size_on_the_sides_that_the_document_is_made_for(int pages, double width, string duplex)
    {
        using var document = Pages.Read(new PagedDocument("Printed", null, [.. Enumerable.Repeat(new Page(width, 507 - width, [new Label(new Point(30, 60), "Moth")]), pages)]));

        var preferences = (UglyToad.PdfPig.Tokens.DictionaryToken)document.Structure.GetObject(
            ((UglyToad.PdfPig.Tokens.IndirectReferenceToken)document.Structure.Catalog.CatalogDictionary.Data["ViewerPreferences"]).Data).Data;

        preferences.Data.Select(entry => $"{entry.Key} {entry.Value}").Should().BeEquivalentTo("DisplayDocTitle True", "PrintScaling /None", $"Duplex /{duplex}", "PickTrayByPDFSize True");
        document.Version.Should().Be(1.7);
    }

    [Fact]
    public void A_template_that_is_cut_out_keeps_its_back_blank()
    {
        var chapter = Paginator.Chapter(new SheetDocument("Templates", Pages.Stamp, new PageSetup(Paper.A4), [new Paragraph("One"), new PageBreak(), new Paragraph("Two")]) { OneSided = true });

        chapter.Alone(Pages.Stamp).Document.Sides.Should().Be(PrintedSides.One);
    }

    private static PagedDocument Busy() => new(
        "Busy",
        new DateOnly(2026, 5, 17),
        [
            new Page(210, 297, [new Label(new Point(30, 60), "Heath Ж", 12), new Circle(new Point(50, 50), 10, Stroke.Centre, Fill.Hatch)])
            {
                Bookmarks = [new Bookmark("One", 1, 20), new Bookmark("Inside", 2, 40)],
                Links = [new PageLink(new Bounds(20, 20, 60, 30), 2)],
            },
            new Page(210, 297, [new Label(new Point(30, 60), "Moth", 12, Weight: TextWeight.Bold)]) { Bookmarks = [new Bookmark("Two", 1, 20)] },
        ]);
}
