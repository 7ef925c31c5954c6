using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Tests.Drawings;

public sealed class DrawingTests
{
    [Fact]
    public void Scaling_moves_points_but_leaves_text_and_line_widths_alone()
    {
        var drawing = new Drawing("t", "d", [new Line(new Point(0, 0), new Point(1000, 0), Stroke.Edge), new Label(new Point(500, 10), "A", 9)]);

        var scaled = drawing.Scaled(0.1);

        scaled.Marks[0].Should().Be(new Line(new Point(0, 0), new Point(100, 0), Stroke.Edge));
        scaled.Marks[1].Should().Be(new Label(new Point(50, 1), "A", 9));
    }

    [Fact]
    public void A_dimension_keeps_the_measure_of_the_thing_when_the_drawing_is_reduced()
    {
        var drawing = new Drawing("t", "d", [Dimension.InMillimetres(new Point(0, 0), new Point(640, 0), 10)]);

        drawing.Scaled(0.1).PlainMarks().OfType<Label>().Single().Text.Should().Be("640 mm");
    }

    [Theory]
    [InlineData(0, 0, 40, 0)]
    [InlineData(40, 0, 0, 0)]
    [InlineData(0, 0, 0, 40)]
    [InlineData(0, 40, 0, 0)]
    [InlineData(0, 0, 30, 30)]
    [InlineData(30, 30, 0, 0)]
    public void Dimension_text_reads_from_below_or_from_the_right(double x1, double y1, double x2, double y2)
    {
        var dimension = Dimension.InMillimetres(new Point(x1, y1), new Point(x2, y2), 8);

        var label = dimension.Marks().OfType<Label>().Single();

        // Reading direction points right, or straight up; never left, never down.
        Math.Cos(label.Turn).Should().BeGreaterThan(-1e-9);
        (Math.Cos(label.Turn) > 1e-9 || Math.Sin(label.Turn) < 0).Should().BeTrue();
    }

    [Fact]
    public void Bounds_of_an_arc_reach_no_further_than_its_points() =>
        Gen.Select(Gen.Double[-6, 6], Gen.Double[-6, 6]).Sample((start, sweep) =>
        {
            var bounds = new Arc(new Point(0, 0), 1, start, sweep, Stroke.Thin).Bounds;
            var walked = Bounds.Of(Enumerable.Range(0, 4001).Select(i =>
                new Point(Math.Cos(start + (sweep * i / 4000)), Math.Sin(start + (sweep * i / 4000)))));

            // Steps of at most 0.0015 rad miss an extreme by half of that squared over two: under 1e-6.
            return Math.Abs(bounds.Left - walked.Left) < 1e-6 && Math.Abs(bounds.Right - walked.Right) < 1e-6
                && Math.Abs(bounds.Top - walked.Top) < 1e-6 && Math.Abs(bounds.Bottom - walked.Bottom) < 1e-6;
        });

    /// <summary>The lines are 2 mm apart, so their length times 2 mm is the hatched area, by Cavalieri's principle.</summary>
    [Fact]
    public void Hatching_covers_the_area_of_its_shape()
    {
        var shape = Polygon.Rectangle(new Bounds(0, 0, 300, 200), null, Fill.Hatch);

        var length = new Drawing("t", "d", [shape]).PlainMarks().OfType<Line>().Sum(line => line.From.DistanceTo(line.To));

        // The midpoint rule is exact but for the three corners where the chord's slope changes: under one line's worth.
        (2 * length).Should().BeApproximately(300 * 200, 300 * 2);
    }

    [Fact]
    public void Quarter_turn_is_clockwise_on_the_page()
    {
        var turned = new Line(new Point(0, 0), new Point(10, 0), Stroke.Thin).Under(new Similarity(1, Math.PI / 2, 0, 0));

        ((Line)turned).To.X.Should().BeApproximately(0, 1e-12);
        ((Line)turned).To.Y.Should().BeApproximately(10, 1e-12);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    public void An_impossible_scale_is_refused(double scale) =>
        new Drawing("t", "d", []).Invoking(drawing => drawing.Scaled(scale)).Should().Throw<ArgumentOutOfRangeException>();
}
