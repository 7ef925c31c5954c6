using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Layout;

public sealed class PaginatorTests
{
    [Fact]
    public void Every_page_says_which_kit_content_date_and_page_it_is()
    {
        var laid = Pages.Lay(new Paragraph("First"), new PageBreak(), new Paragraph("Second"));

        laid.Document.Pages.Should().HaveCount(2);
        Pages.Labels(laid.Document.Pages[1]).Should().Contain(
            ["Fen kit", "Test sheet", "Content 4f3a90c1", "2026-05-17", "Page 2 of 2", "Second"]);
    }

    [Fact]
    public void Long_text_flows_on_and_keeps_every_word()
    {
        var text = string.Join(' ', Enumerable.Range(0, 4000).Select(i => $"w{i}"));

        var laid = Pages.Lay(new Paragraph(text));

        laid.Document.Pages.Count.Should().BeGreaterThan(2);
        string.Join(' ', laid.Document.Pages.SelectMany(Pages.Labels).Where(label => label.StartsWith('w'))).Should().Be(text);
    }

    [Fact]
    public void A_heading_is_never_left_alone_at_the_foot_of_a_page()
    {
        var filler = new Spacer(new PageSetup(Paper.A4).Body.Height - 20);

        var laid = Pages.Lay(filler, new Heading("Alone?", 2), new KeepTogether(new Spacer(30)));

        Pages.Labels(laid.Document.Pages[0]).Should().NotContain("Alone?");
        Pages.Labels(laid.Document.Pages[1]).Should().Contain("Alone?");
    }

    [Fact]
    public void A_heading_stands_over_the_row_that_is_broken_for_being_taller_than_a_page()
    {
        var giant = string.Join(' ', Enumerable.Range(0, 3000).Select(i => $"giant{i}"));

        var laid = Pages.Lay(new Paragraph("Before"), new Heading("Giants", 2), new Table([new Column("Part")], [new TableRow([giant])]));

        Pages.Labels(laid.Document.Pages[1]).Should().Contain("Giants").And.Contain(text => text.Contains("giant0 "));
        laid.Problems.Should().BeEmpty();
    }

    [Fact]
    public void A_heading_stands_over_the_word_that_what_it_heads_was_left_out()
    {
        var wide = new Drawing("template", "wide", [new Line(new Point(0, 0), new Point(400, 0), Stroke.Edge)]);

        var page = Pages.Lay(new Heading("Templates", 2), new DrawingBlock(wide, TrueScale: true), new Paragraph("After")).Document.Pages.Single();

        Pages.Labels(page).Should().ContainInOrder("Templates", "Left out: it does not fit on this paper", "After");
    }

    [Fact]
    public void A_word_broken_at_the_foot_of_a_page_is_not_spelled_with_a_space_on_the_next()
    {
        var word = new string('m', 9000);

        var laid = Pages.Lay(new Paragraph(word));

        laid.Document.Pages.Should().HaveCountGreaterThan(1);
        laid.Document.Pages.SelectMany(Pages.Labels).Where(text => text.StartsWith("mm", StringComparison.Ordinal)).Should().OnlyContain(text => !text.Contains(' '));
    }

    [Fact]
    public void What_fits_no_page_is_reported_with_its_reason_and_said_on_the_sheet()
    {
        var wide = new Drawing("template", "wide", [new Line(new Point(0, 0), new Point(400, 0), Stroke.Edge)]);

        var laid = Pages.Lay(new Paragraph("Before"), new DrawingBlock(wide, TrueScale: true), new Paragraph("After"));

        laid.Problems.Should().Equal("The drawing template is 400 mm wide; the page holds 174 mm.");
        var page = laid.Document.Pages.Should().ContainSingle("what is said in its place has room where it had none").Subject;
        Pages.Labels(page).Should().ContainInOrder("Before", "Left out: it does not fit on this paper", "After");
    }

    [Fact]
    public void A_drawing_too_large_for_the_page_is_reduced_to_a_standard_scale()
    {
        var frame = new Drawing("Frame", "d", [new Line(new Point(0, 0), new Point(800, 0), Stroke.Edge)]);

        var page = Pages.Lay(new DrawingBlock(frame)).Document.Pages.Single();

        Pages.Labels(page).Should().Contain("Frame, scale 1:5");
        page.Marks.OfType<Line>().Should().Contain(line => Math.Abs(line.From.DistanceTo(line.To) - 160) < 1e-9);
    }

    [Fact]
    public void An_empty_document_still_makes_a_page() => Pages.Lay().Document.Pages.Should().HaveCount(1);

    /// <remarks>A4 has 255 mm between the margins; a square of 90 mm leaves 165, one of 140 leaves 115.</remarks>
    [Theory]
    [InlineData(90, true)]
    [InlineData(140, false)]
    public void What_stays_together_is_split_only_where_most_of_a_page_would_stay_empty(double above, bool split)
    {
        Drawing Square(double side) => new("a square", "one drawing", [Polygon.Rectangle(new Bounds(0, 0, side, side), Stroke.Edge)]);
        DrawingBlock Block(double side) => new(Square(side), TrueScale: true, Caption: "");

        var pages = Pages.Lay(Block(above), new KeepTogether(new Stack([Block(100), Block(101)]))).Document.Pages;

        pages.Should().HaveCount(2);
        pages[0].Marks.OfType<Polygon>().Should().HaveCount(split ? 2 : 1);
    }
}
