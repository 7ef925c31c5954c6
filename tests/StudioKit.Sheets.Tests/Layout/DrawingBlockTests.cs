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
}
