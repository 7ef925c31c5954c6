using System.Globalization;
using System.Text;
using System.Xml.Linq;
using UglyToad.PdfPig;

namespace StudioKit.Sheets.Tests;

public sealed class SheetGroupTests
{
    private static readonly SheetOptions Options = new() { Date = new DateOnly(2026, 5, 17) };

    private static readonly Lazy<IReadOnlyList<SheetGroup>> Groups = new(() => SheetSet.Groups(SamplePlan.Plan, Options));

    [Fact]
    public void Cards_and_documents_can_be_asked_for_one_by_one()
    {
        Groups.Value.Where(group => group.Kind == SheetGroupKind.Cards).Select(group => group.Name).Should().Equal("cards-A6.pdf", "cards-3x5in.pdf");

        var cards = Groups.Value.Single(group => group.Name == "cards-A6.pdf").Write();

        cards.Should().ContainSingle().Which.Name.Should().Be("cards-A6.pdf");
    }

    [Fact]
    public void Each_group_has_a_name_of_its_own() => Groups.Value.Select(group => group.Name).Should().OnlyHaveUniqueItems();

    [Fact]
    public void A_page_to_look_at_has_the_size_and_every_word_of_the_page_that_is_printed()
    {
        var group = Groups.Value.Single(each => each.Name == "pack-list.pdf");

        var pages = group.Pages();

        using var printed = PdfDocument.Open(group.Write()[0].Content.ToArray());
        pages.Should().HaveCount(printed.NumberOfPages);
        var roots = pages.Select(page => XDocument.Parse(Encoding.UTF8.GetString(page.Content.Span)).Root!).ToList();
        // ISO 216: A4 is 210 mm × 297 mm.
        roots.Should().OnlyContain(root => root.Attribute("viewBox")!.Value == "0 0 210 297");
        for (var i = 0; i < roots.Count; i++)
        {
            Letters(string.Concat(roots[i].Descendants().Where(element => element.Name.LocalName == "text").Select(text => text.Value)))
                .Should().Be(Letters(printed.GetPage(i + 1).Text), string.Create(CultureInfo.InvariantCulture, $"page {i + 1}"));
        }
    }

    [Fact]
    public void Tables_have_no_pages_to_look_at() =>
        Groups.Value.Single(group => group.Kind == SheetGroupKind.Tables).Pages().Should().BeEmpty();

    // The order in which marks are written may differ, and a PDF keeps no blanks at line ends.
    private static string Letters(string text) => new([.. text.Where(letter => !char.IsWhiteSpace(letter)).Order()]);
}
