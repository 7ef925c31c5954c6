using StudioKit.Physics.Exposure;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Tests.Documents;

public sealed class MarginContoursTests
{
    private const int Nodes = 25;
    private const double Middle = (Nodes - 1) / 2.0;

    /// <summary>A cone's contour is a circle. Straight lines between grid points miss it by at most h²/(8·r) = 0.02 of a step at r = 6 (sagitta).</summary>
    [Fact]
    public void The_contour_of_a_cone_is_a_circle()
    {
        var ring = Cone().Rings(-6).Should().ContainSingle().Subject;

        ring.Should().OnlyContain(point => Math.Abs(point.DistanceTo(new Point(Middle, Middle)) - 6) < 0.03);
        Area(ring).Should().BeApproximately(Math.PI * 36, 0.01 * Math.PI * 36);
    }

    [Fact]
    public void A_level_under_everything_outlines_the_whole_grid()
    {
        var contours = Cone();

        Area(contours.Rings(-1000).Should().ContainSingle().Subject).Should().BeApproximately((Nodes - 1) * (Nodes - 1), 1e-9);
        contours.Lines(-1000).Should().BeEmpty();
    }

    [Fact]
    public void A_level_over_everything_outlines_nothing() => Cone().Rings(1).Should().BeEmpty();

    /// <summary>At r = 14, beyond the sides at 12 and short of the corners at 17, the circle is four arcs cut off by the grid's edge.</summary>
    [Fact]
    public void A_contour_that_leaves_the_grid_is_cut_open_there()
    {
        var lines = Cone().Lines(-14);

        lines.Should().HaveCount(4);
        lines.SelectMany(line => line).Should().OnlyContain(point => Math.Abs(point.DistanceTo(new Point(Middle, Middle)) - 14) < 0.03);
    }

    /// <summary>Ring of light with a dark middle: area between two circles by the even-odd rule.</summary>
    [Fact]
    public void A_dark_middle_is_a_ring_of_its_own() =>
        Contours((x, y) => -Math.Abs(Radius(x, y) - 6)).Rings(-3).Select(Area).Order().Should().SatisfyRespectively(
            inner => inner.Should().BeApproximately(Math.PI * 9, 0.03 * Math.PI * 9),
            outer => outer.Should().BeApproximately(Math.PI * 81, 0.01 * Math.PI * 81));

    private static MarginContours Cone() => Contours((x, y) => -Radius(x, y));

    private static double Radius(int x, int y) => double.Hypot(x - Middle, y - Middle);

    private static MarginContours Contours(Func<int, int, double> margin) => new(new MarginGrid(
        Nodes, Nodes, [.. Enumerable.Range(0, Nodes * Nodes).Select(i => margin(i % Nodes, i / Nodes))], new Stops(1), []));

    // Shoelace formula.
    private static double Area(IReadOnlyList<Point> ring) =>
        Math.Abs(ring.Select((point, i) => (point.X * ring[(i + 1) % ring.Count].Y) - (ring[(i + 1) % ring.Count].X * point.Y)).Sum()) / 2;
}
