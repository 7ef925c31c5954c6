using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Layout;
using UglyToad.PdfPig;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class BoundBookTests
{
    [Fact]
    public void What_is_cut_apart_begins_on_a_right_hand_page_and_what_is_cut_out_has_blank_backs()
    {
        for (var before = 1; before <= 2; before++)
        {
            var book = FieldBook.Bind(SamplePlan.Plan, [Of("Report", before), Of("Templates", 2) with { OneSided = true }, Of("Cards", 2) with { StartsRight = true }, Of("Last", 1)], Pages.Stamp, Paper.A4).Document;

            // A page with an odd number is a front.
            var says = book.Pages.Select(page => string.Join(' ', Pages.Labels(page))).ToList();
            foreach (var first in new[] { "Templates, side 1", "Templates, side 2", "Cards, side 1" })
            {
                (says.FindIndex(text => text.Contains(first, StringComparison.Ordinal)) % 2).Should().Be(0, first);
            }

            foreach (var template in new[] { "Templates, side 1", "Templates, side 2" })
            {
                book.Pages[says.FindIndex(text => text.Contains(template, StringComparison.Ordinal)) + 1].Marks.Should().BeEmpty("its back is cut up with it");
            }

            says.Select((text, i) => text.Length == 0 || text.Contains($"Page {i + 1} of {says.Count}", StringComparison.Ordinal) || i == 0).Should().NotContain(false);
            foreach (var link in book.Pages.SelectMany(page => page.Links))
            {
                says[link.Page - 1].Should().NotBeEmpty("the contents lead to no blank page");
            }
        }
    }

    [Theory]
    [MemberData(nameof(DemoBooks.Kits), MemberType = typeof(DemoBooks))]
    public void Cards_of_a_demo_kits_book_lie_on_fronts_and_their_backs_behind_them(string kit)
    {
        using var book = PdfDocument.Open(DemoBooks.Book(kit).Content.ToArray());
        var cards = book.GetPages().Where(page => page.Text.Contains("flip on the long edge", StringComparison.Ordinal)).Select(page => page.Number).ToList();
        var first = cards.Where(number => !cards.Contains(number - 1)).ToList();
        first.Should().NotBeEmpty().And.OnlyContain(number => number % 2 == 1);
    }

    private static Chapter Of(string title, int pages) => Paginator.Chapter(new SheetDocument(
        title, Pages.Stamp, new PageSetup(Paper.A4), [.. Enumerable.Range(1, pages).SelectMany(i => new Block[] { new Paragraph($"{title}, side {i}"), new PageBreak() }).SkipLast(1)]));
}
