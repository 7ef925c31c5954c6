using System.Globalization;
using System.Text.RegularExpressions;
using StudioKit.Web.Drawing;
using StudioKit.Web.Results;

namespace StudioKit.Web.Tests.Drawing;

/// <summary>Areas of the bands against what straight lines between the nodes enclose, by the shoelace formula.</summary>
public sealed partial class MapBandsTests
{
    [Theory]
    [InlineData(-2, 100 * 50)]
    [InlineData(0, 100 * 50 / 2.0)]
    [InlineData(0.5, 100 * 50 / 4.0)]
    [InlineData(2, 0)]
    public void A_field_that_rises_evenly_across_is_cut_where_it_reaches_the_level(double level, double area)
    {
        var bands = new MapBands([.. from row in Enumerable.Range(0, 6) from column in Enumerable.Range(0, 11) select (column / 5.0) - 1], 11, new Spot(-50, 25), 100, 50);

        Area(bands.At(level).Outline).Should().BeApproximately(area, 0.1 * 50, "places are rounded to a tenth");
    }

    [Fact]
    public void A_peak_of_one_node_is_a_diamond_about_it()
    {
        double[] values = [0, 0, 0, 0, 1, 0, 0, 0, 0];

        Area(new MapBands(values, 3, new Spot(0, 20), 20, 20).At(0.5).Outline).Should().BeApproximately(2 * 5 * 5, 0.5, "its corners lie half a cell from the node");
    }

    [Fact]
    public void Lines_between_bands_keep_off_the_edges_of_the_map()
    {
        double[] values = [1, 1, 1, 1, 1, 1, 1, 1, 1];

        new MapBands(values, 3, new Spot(0, 20), 20, 20).At(0.5).Edge.Should().BeEmpty();
    }

    [Fact]
    public void A_line_between_bands_runs_where_a_field_that_rises_evenly_reaches_the_level()
    {
        double[] values = [0, 1, 2, 0, 1, 2];

        new MapBands(values, 3, new Spot(0, 20), 20, 20).At(1.5).Edge.Should().Be("M15 20L15 0");
    }

    [Theory]
    [InlineData(0, "0")]
    [InlineData(-0.04, "0")]
    [InlineData(12, "12")]
    [InlineData(-0.26, "-0.3")]
    [InlineData(1234.56, "1234.6")]
    [InlineData(-7.96, "-8")]
    [InlineData(3e9, "3000000000")]
    public void A_number_in_a_drawing_is_written_to_a_tenth(double value, string text) => StudioKit.Web.Drawing.Path.Number(value).Should().Be(text);

    private static double Area(string path) => path.Split('Z', StringSplitOptions.RemoveEmptyEntries).Sum(part => Math.Abs(Shoelace(Corners(part))));

    private static double Shoelace(List<(double X, double Y)> corners) =>
        corners.Zip(corners.Skip(1).Append(corners[0]), (one, other) => (one.X * other.Y) - (other.X * one.Y)).Sum() / 2;

    private static List<(double X, double Y)> Corners(string part)
    {
        List<(double X, double Y)> corners = [];
        foreach (Match match in Command().Matches(part))
        {
            double[] numbers = [.. match.Groups["numbers"].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(text => double.Parse(text, CultureInfo.InvariantCulture))];
            var (x, y) = corners.Count > 0 ? corners[^1] : (0, 0);
            corners.Add(match.Groups["command"].Value switch { "H" => (numbers[0], y), "V" => (x, numbers[0]), _ => (numbers[0], numbers[1]) });
        }

        return corners;
    }

    [GeneratedRegex("(?<command>[MLHV])(?<numbers>[-0-9. ]+)", RegexOptions.ExplicitCapture, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Command();
}
