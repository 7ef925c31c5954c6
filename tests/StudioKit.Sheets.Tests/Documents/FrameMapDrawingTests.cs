using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class FrameMapDrawingTests
{
    [Fact]
    public void What_is_not_white_is_hatched_what_is_barely_white_grey_and_what_is_unknown_crossed()
    {
        var drawing = FrameMapDrawing.Of([new FrameMap("Margin", 4, 1, [-0.5, 0.1, 1, double.NaN])]);

        Fills(drawing, Fill.Hatch).Should().Be(1);
        Fills(drawing, Fill.LightGrey).Should().Be(1);
        drawing.Marks.OfType<Line>().Should().HaveCount(2);
    }

    [Fact]
    public void Differences_of_either_sign_are_told_apart()
    {
        var drawing = FrameMapDrawing.Of([new FrameMap("Difference", 3, 1, [-0.5, 0.1, 0.5]) { IsDifference = true }]);

        Fills(drawing, Fill.Hatch).Should().Be(1);
        Fills(drawing, Fill.LightGrey).Should().Be(1);
        drawing.Marks.OfType<Label>().Select(label => label.Text).Should().Contain("−0.5").And.Contain("+0.5");
    }

    [Fact]
    public void Maps_stand_one_above_the_other_without_touching()
    {
        var map = new FrameMap("Margin", 24, 16, [.. Enumerable.Repeat(1.0, 24 * 16)]);

        var frames = FrameMapDrawing.Of([map, map]).Marks.OfType<Polygon>().Where(polygon => polygon.Stroke is not null).Select(polygon => polygon.Bounds).ToList();

        frames.Should().HaveCount(2);
        frames[1].Top.Should().BeGreaterThan(frames[0].Bottom + 10);
        (frames[0].Width / frames[0].Height).Should().BeApproximately(1.5, 1e-9);
    }

    private static int Fills(Drawing drawing, Fill fill) => drawing.Marks.OfType<Polygon>().Count(polygon => polygon.Fill == fill);
}
