using StudioKit.Kits.Cards;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Layout;
using UglyToad.PdfPig;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class FieldBookTests
{
    private static readonly SheetOptions Options = new() { Date = new DateOnly(2026, 5, 17) };

    [Fact]
    public void Contents_give_the_page_each_heading_is_on()
    {
        Block[] blocks = [.. Enumerable.Range(1, 90).SelectMany(i => new Block[] { new Heading($"Part {i}", 2), new Paragraph("Text"), new PageBreak() })];
        var chapter = Paginator.Chapter(new SheetDocument("Many parts", Pages.Stamp, new PageSetup(Paper.A4), blocks));

        var pages = FieldBook.Bind(SamplePlan.Plan, [chapter], Pages.Stamp, Paper.A4).Document.Pages;

        var contents = pages.TakeWhile(page => page.Links.Count > 0).ToList();
        contents.Count.Should().BeGreaterThan(1);
        contents.Sum(page => page.Links.Count).Should().Be(91);
        foreach (var (link, i) in contents.SelectMany(page => page.Links).Skip(1).Select((link, i) => (link, i + 1)))
        {
            Pages.Labels(pages[link.Page - 1]).Should().Contain($"Part {i}").And.Contain($"Page {link.Page} of {pages.Count}");
        }
    }

    [Fact]
    public void A_book_binds_every_sheet_behind_its_cover_and_numbers_its_pages_through()
    {
        // The field pack stays apart, and has the log with it.
        var files = SheetSet.Write(SamplePlan.Plan, Options with { Cards = [CardTemplates.Of("A6")] }).Where(file => file.Name.EndsWith(".pdf", StringComparison.Ordinal) && file.Name is not ("field-pack.pdf" or "paper-log.pdf"));
        var alone = files.Sum(PageCount);
        using var book = PdfDocument.Open(SheetSet.WriteBook(SamplePlan.Plan, Options)[^1].Content.ToArray());

        // One page of cover and contents, and at most one blank page before the cards, which begin on a front.
        var blank = book.GetPages().Count(page => page.Letters.Count == 0);
        blank.Should().BeLessThanOrEqualTo(1);
        book.NumberOfPages.Should().Be(alone + 1 + blank);
        Text(book.GetPage(1)).Should().Contain("Fen edge kit").And.Contain("Field book").And.Contain("2026-05-17");
        Text(book.GetPage(1)).Should().ContainAll("Contents", "Plan report", "Starting exposures", "Build sheet", "Exposure cards, A6", "Pack list", "Appendix");
        book.GetPages().Where(page => page.Letters.Count > 0).Should().OnlyContain(page => page.Text.Contains($"Page {page.Number} of {book.NumberOfPages}"));
    }

    [Fact]
    public void A_book_has_an_outline_by_chapter_a_title_and_a_language()
    {
        using var book = PdfDocument.Open(SheetSet.WriteBook(SamplePlan.Plan, Options)[^1].Content.ToArray());

        book.TryGetBookmarks(out var bookmarks).Should().BeTrue();
        bookmarks!.Roots.Select(root => root.Title).Should().Equal("To be mended first", "Plan report", "Build sheet", "Exposure cards, A6", "Pack list", "Appendix");
        bookmarks!.Roots[1].Children.Select(child => child.Title).Should().Contain("Panel").And.Contain("Checks");
        book.Information.Title.Should().Be("Fen edge kit: Field book");
        book.Structure.Catalog.CatalogDictionary.Data["Lang"].ToString().Should().Contain("en");
    }

    private static int PageCount(SheetFile file)
    {
        using var document = PdfDocument.Open(file.Content.ToArray());
        return document.NumberOfPages;
    }

    private static string Text(UglyToad.PdfPig.Content.Page page) => string.Join(' ', page.GetWords().Select(word => word.Text));
}
