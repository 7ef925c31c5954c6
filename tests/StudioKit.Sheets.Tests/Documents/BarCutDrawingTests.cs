using StudioKit.Planning.Cutting;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>One bar of 1,000 mm, 10 mm squared off, kerf 3 mm, three pieces of 200 mm: cuts at 200, 403 and 606 mm from the squared end, 381 mm left.</summary>
public sealed class BarCutDrawingTests
{
    private static readonly Drawing Bar = BarCutDrawing.EachPattern(new FirstFitBarCutPlanner().Plan(new BarCutRequest
    {
        Pieces = [new BarPiece("leg", Length.FromMillimeters(200), 3)],
        Stock = [new StockBar("pipe", Length.FromMillimeters(1000), 4m)],
        Kerf = Length.FromMillimeters(3),
        Trim = Length.FromMillimeters(10),
    })).Single();

    // The longest bar takes 150 mm of paper.
    private const double PaperPerMillimetre = 150.0 / 1000;

    [Fact]
    public void Running_measures_count_from_the_squared_end_with_a_kerf_after_each_piece() =>
        Bar.Marks.OfType<Label>().Where(label => label.Turn != 0).Select(label => label.Text).Should().Equal("0", "200", "403", "606");

    [Fact]
    public void Cuts_are_drawn_where_they_are_measured_past_what_is_squared_off()
    {
        var cuts = Bar.Marks.OfType<Line>().Where(line => Math.Abs(line.From.X - line.To.X) < 1e-9 && Math.Abs(line.From.Y - line.To.Y) > 5).Select(line => line.From.X / PaperPerMillimetre);

        cuts.Should().BeEquivalentTo([210.0, 413, 616], options => options.Using<double>(pair => pair.Subject.Should().BeApproximately(pair.Expectation, 1e-6)).WhenTypeIs<double>());
    }

    [Fact]
    public void What_is_left_over_is_hatched_at_the_far_end()
    {
        var rest = Bar.Marks.OfType<Polygon>().Single(mark => mark.Fill == Fill.Hatch).Bounds;

        (rest.Left / PaperPerMillimetre).Should().BeApproximately(616, 1e-6);
        (rest.Right / PaperPerMillimetre).Should().BeApproximately(1000, 1e-6);
    }
}
