using StudioKit.Sheets.Tests.OnPaper;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>A book that is taken along and leafed through must stay thin.</summary>
public sealed class BookLengthTests
{
    private const int Most = 40;

    /// <remarks>
    /// Blank backs count, as they are turned over like the others; cards are cut out of it. The pond's edge, with three panels and two upright sheets, has more to build than a book of this length holds.
    /// </remarks>
    [Theory]
    [InlineData("fen-edge", Paper.A4)]
    [InlineData("heath-ultralight", Paper.A4)]
    [InlineData("heath-ultralight", Paper.Letter)]
    [InlineData("tall-stand", Paper.A4)]
    [InlineData("tall-stand", Paper.Letter)]
    public void A_demo_kits_book_has_at_most_40_pages_besides_its_cards(string kit, Paper paper)
    {
        var pages = PrintedPage.Of(DemoBooks.Book(kit, paper));

        pages.Should().Contain(page => page.IsOfCards);
        pages.Count(page => !page.IsOfCards).Should().BeLessThanOrEqualTo(Most, string.Join(", ", pages.Where(page => !page.IsOfCards).GroupBy(page => page.Title).Select(chapter => $"{chapter.Key}: {chapter.Count()}")));
    }
}
