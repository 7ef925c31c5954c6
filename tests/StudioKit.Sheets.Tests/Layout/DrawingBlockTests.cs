using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Layout;

public sealed class DrawingBlockTests
{
    [Fact]
    public void A_caption_stands_under_its_drawing_in_the_middle()
    {
        var square = new Drawing("Square", "A square of 40 mm", [Polygon.Rectangle(new Bounds(5, 5, 45, 45), Stroke.Edge)]);

        var fit = new DrawingBlock(square).Fit(100, 200);

        var drawn = fit.Marks.OfType<Polygon>().Single().Bounds;
        var caption = fit.Marks.OfType<Label>().Single();
        (drawn.Left, drawn.Right, drawn.Top).Should().Be((30, 70, 0));
        caption.Text.Should().Be("Square, scale 1:1");
        caption.Bounds.Top.Should().BeGreaterThan(drawn.Bottom);
        caption.At.X.Should().Be(50);
        caption.Bounds.Bottom.Should().BeLessThan(fit.Height);
    }

    [Fact]
    public void A_long_caption_wraps_between_the_edges_of_the_page()
    {
        var name = string.Join(' ', Enumerable.Repeat("the sheet behind the sundews of the northern fen", 8));
        var square = new Drawing(name, "A square of 40 mm", [Polygon.Rectangle(new Bounds(5, 5, 45, 45), Stroke.Edge)]);

        var fit = new DrawingBlock(square).Fit(174, 200);

        fit.Marks.OfType<Label>().Should().HaveCountGreaterThan(1).And.OnlyContain(label => label.Bounds.Left >= -0.01 && label.Bounds.Right <= 174.01 && label.Bounds.Bottom <= fit.Height);
        string.Join(' ', fit.Marks.OfType<Label>().Select(label => label.Text)).Should().Be($"{name}, scale 1:1");
    }

    [Fact]
    public void A_drawing_that_is_taller_than_what_a_heading_leaves_of_a_page_is_reduced_and_not_left_out()
    {
        var pole = new Drawing("Pole", "A pole", [new Line(new Point(0, 0), new Point(0, 252), Stroke.Edge)]);

        var laid = Pages.Lay(new Paragraph("Before"), new Heading("Poles", 2), new DrawingBlock(pole, MaxHeight: 300));

        laid.Problems.Should().BeEmpty();
        laid.Document.Pages.Should().HaveCount(2);
        Pages.Labels(laid.Document.Pages[1]).Should().Contain(["Poles", "Pole, scale 1:2"]);
    }
}
