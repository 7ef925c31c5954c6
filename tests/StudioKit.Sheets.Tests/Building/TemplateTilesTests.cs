using StudioKit.Sheets.Building;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Building;

/// <summary>A softbox's pattern spread over pages of A4; the pages keep the pattern's own measures, so they can be laid on each other here.</summary>
public sealed class TemplateTilesTests
{
    private const double CrossArm = 4;

    private static readonly Drawing Upright = SoftboxPattern.Of(BuiltKit.Table.Frame!.Softboxes.Single());

    private static readonly List<Drawing> Tiles = Tiled(Upright, Paper.A4);

    // As it was laid: the tiles cover the pattern as it stands or a quarter turned.
    private static readonly Drawing Pattern = Covered(Upright) ? Upright : Upright.Under(new Similarity(1, -Math.PI / 2, 0, 0));

    /// <summary>A strip 400 by 150 mm takes three pages across and two along: A4 has 174 by 231 mm of room, 10 of which neighbours share.</summary>
    [Theory]
    [InlineData(400, 150, 2)]
    [InlineData(150, 400, 2)]
    [InlineData(150, 90, 1)]
    [InlineData(330, 220, 2)]
    public void A_template_is_turned_where_it_takes_fewer_pages_then(double width, double height, int pages) =>
        Tiled(new Drawing("strip", "", [Polygon.Rectangle(new Bounds(0, 0, width, height), Stroke.Edge)]), Paper.A4).Should().HaveCount(pages);

    private static List<Drawing> Tiled(Drawing drawing, Paper paper) => [.. TemplateTiles.Of(drawing, new PageSetup(paper).Body).Cast<DrawingBlock>().Select(block => block.Drawing)];

    private static bool Covered(Drawing pattern)
    {
        var lines = Tiles.SelectMany(tile => tile.Marks.OfType<Line>()).Select(line => line.From.X).ToList();
        return Math.Abs(lines.Max() - pattern.Bounds.Right) < 1;
    }

    [Fact]
    public void Every_page_of_a_tiled_template_has_a_bar_of_100_mm()
    {
        Tiles.Should().HaveCountGreaterThan(2, "the pattern is larger than two sheets of paper");
        Tiles.Should().OnlyContain(tile => tile.Marks.OfType<Line>().Any(line => Math.Abs(line.From.Y - line.To.Y) < 1e-9 && Math.Abs(line.From.DistanceTo(line.To) - 100) < 1e-9));
    }

    [Fact]
    public void No_part_of_a_tiled_templates_lines_is_missing_from_its_pages()
    {
        var printed = Tiles.SelectMany(tile => tile.Marks.OfType<Line>()).ToList();

        foreach (var line in Lines(Pattern))
        {
            var steps = (int)Math.Ceiling(line.From.DistanceTo(line.To) / 2);
            var missing = Enumerable.Range(0, steps + 1).Select(i => Between(line, (double)i / steps)).Where(point => !printed.Exists(mark => Passes(mark, point)));
            missing.Should().BeEmpty();
        }
    }

    /// <remarks>A cross must stand on both pages, and all lines round it too: only then can one page be laid on the other by eye.</remarks>
    [Fact]
    public void Neighbouring_pages_share_their_crosses_and_the_lines_round_them()
    {
        var shared = 0;
        foreach (var (one, other) in Tiles.SelectMany((tile, i) => Tiles.Skip(i + 1).Select(next => (tile, next))))
        {
            foreach (var cross in Crosses(one).Where(cross => Crosses(other).Any(same => same.DistanceTo(cross) < 1e-6)))
            {
                shared++;
                var round = new Bounds(cross.X, cross.Y, cross.X, cross.Y).Grown(CrossArm);
                var whole = Length(ClippedLines.Of(Lines(Pattern), round));
                LengthOfPattern(one, round).Should().BeApproximately(whole, 1e-6);
                LengthOfPattern(other, round).Should().BeApproximately(whole, 1e-6);
            }
        }

        var all = Tiles.SelectMany(Crosses).ToList();
        all.Should().OnlyContain(cross => all.Count(same => same.DistanceTo(cross) < 1e-6) == 2, "a cross on one page only has nothing to be laid on");
        shared.Should().BeGreaterThanOrEqualTo(2);
    }

    private static IEnumerable<Line> Lines(Drawing drawing) => ClippedLines.Of(drawing.PlainMarks(), drawing.Bounds.Grown(1));

    private static IEnumerable<Point> Crosses(Drawing tile) => tile.Marks.OfType<Circle>().Select(circle => circle.Centre);

    // Crosses and bar are drawn over the pattern's lines; what lies on none of those is left out.
    private static double LengthOfPattern(Drawing tile, Bounds round) =>
        Length(ClippedLines.Of(tile.Marks.OfType<Line>().Where(line => Lines(Pattern).Any(whole => Passes(whole, line.From) && Passes(whole, line.To))), round));

    private static double Length(IEnumerable<Line> lines) => lines.Sum(line => line.From.DistanceTo(line.To));

    private static Point Between(Line line, double share) =>
        new(line.From.X + (share * (line.To.X - line.From.X)), line.From.Y + (share * (line.To.Y - line.From.Y)));

    // On the line to a thousandth of a millimetre: the way over the point is no longer than the line.
    private static bool Passes(Line line, Point point) =>
        line.From.DistanceTo(point) + point.DistanceTo(line.To) - line.From.DistanceTo(line.To) < 1e-6;
}
