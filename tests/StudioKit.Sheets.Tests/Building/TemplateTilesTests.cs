using StudioKit.Sheets.Building;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Tests.Building;

/// <summary>A softbox's pattern spread over pages of A4; the pages keep the pattern's own measures, so they can be laid on each other here.</summary>
public sealed class TemplateTilesTests
{
    private const double CrossArm = 4;

    private static readonly Drawing Pattern = SoftboxPattern.Of(BuiltKit.Table.Frame!.Softboxes.Single());

    private static readonly List<Drawing> Tiles = [.. TemplateTiles.Of(Pattern, new PageSetup(Paper.A4).Body).Cast<DrawingBlock>().Select(block => block.Drawing)];

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
