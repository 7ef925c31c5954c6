using StudioKit.Benchmarks;
using StudioKit.Physics.Light;

namespace StudioKit.Physics.Tests.Light.Traced;

/// <summary>The solver held to paths of light that are followed here and now, in boxes far from a cube.</summary>
public sealed class TracedBoxTests
{
    private const int Paths = 131_072;
    private const int ManyPaths = 262_144;
    private static readonly PanelGrid FifthsOfThePanel = new(5, 5);

    /// <summary>Width, depth and height of a box [m] with a matt flash under its middle, which lights all four quarters alike.</summary>
    /// <remarks>Tolerance: 0.5 %, of which the tracer's standard error takes less than 0.1 %.</remarks>
    [Theory]
    [InlineData(0.9, 0.4, 0.35, Paths)]
    [InlineData(0.35, 0.3, 0.8, ManyPaths)]
    public void A_long_box_and_a_tall_one_are_as_bright_as_traced_paths_say(double width, double depth, double height, int paths)
    {
        var (panel, surround, flash) = (Studio.Panel(width, depth, height), Studio.WhiteSkirts, Studio.Flash(z: 0.1));
        var map = LightBox.Prepare(panel, surround, FifthsOfThePanel).Illuminate([flash]);

        Holds(map, new TracedBox(panel, surround, flash), 0.005, paths, (0, 0), (2, 0), (0, 2), (2, 2));
    }

    /// <summary>The studio whose light map the benchmarks time, with the shadows of twenty pieces of pipe and of the flash's body.</summary>
    /// <remarks>
    /// Tolerance: 0.5 % over the middle of the sheet, where pictures are taken, and 1.5 % where the light falls in half shade or past a rail: patches are wider than what
    /// a stretcher hides of a skirt, and one ray tells for each pair of patches whether a pipe stands between.
    /// </remarks>
    [Fact]
    public void A_framed_studio_is_as_bright_as_traced_paths_say()
    {
        var flash = FramedStudio.Flash(0);
        var map = LightBox.Prepare(FramedStudio.Panel, FramedStudio.Surround, FramedStudio.Grid).Illuminate([flash]);
        var box = new TracedBox(FramedStudio.Panel, FramedStudio.Surround, flash);

        Holds(map, box, 0.005, Paths / 2, (11, 11), (11, 9), (9, 11), (9, 9));
        Holds(map, box, 0.015, Paths / 2, (2, 5), (3, 3), (7, 3), (11, 5), (2, 11));
    }

    /// <summary>The independent path tracer of Data/light-scenes.json, three million paths a point.</summary>
    /// <remarks>Tolerance: four standard errors of both.</remarks>
    [Theory]
    [InlineData("grey-skirt-offset", 0, 0.0005)]
    [InlineData("white-skirt-narrow", 3, 0.0003)]
    public void Paths_followed_here_agree_with_those_followed_elsewhere(string name, int point, double error)
    {
        var reference = ReferenceScene.All[name];
        var (panel, flash) = (reference.Scene.Panel, reference.Scene.Emitters[0]);
        var place = new Position(((point % 3) - 1) * 0.4 * panel.Width.Meters, ((point / 3) - 1) * 0.4 * panel.Depth.Meters, panel.Height.Meters);

        var traced = new TracedBox(panel, reference.Scene.Surround, flash).At(place, Paths);

        traced.Exposure.Should().BeApproximately(reference.Traced![point], 4 * double.Hypot(error, traced.StandardError));
    }

    private static void Holds(LightMap map, TracedBox box, double share, int paths, params (int Column, int Row)[] places)
    {
        foreach (var (column, row) in places)
        {
            var traced = box.At(map.Place(column, row), paths);

            traced.StandardError.Should().BeLessThan(0.001 * traced.Exposure, "paths must tell more than is asked");
            map.Exposure(column, row).Should().BeApproximately(traced.Exposure, share * traced.Exposure, "at column {0} of row {1}", column, row);
        }
    }
}
