using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>Light beyond the outermost points of the panel's grid, where the sheet lies on its rails.</summary>
public sealed class LightAtTheEdgeTests
{
    private const double HalfWidth = 0.3;
    private const double HalfDepth = 0.225;
    private static readonly PanelGrid Grid = new(24, 24);

    // Rails of 25 mm pipe along all four edges, their tops 4 mm under the sheet.
    private static readonly LightSurround Railed = Studio.WhiteSkirts with { Frame = [Rail(-1, -1, 1, -1), Rail(1, -1, 1, 1), Rail(1, 1, -1, 1), Rail(-1, 1, -1, -1)] };

    // A small flash with a cosine lobe 0.4 m under a matt sheet gives I·cos²θ/d² = I·h²/d⁴ (Walsh 1958, inverse square and cosine laws).
    // Half a cell, 12.5 mm, carried on: the curvature of d⁻⁴ over it is under a hundredth.
    [Theory]
    [InlineData(-HalfWidth, 0)]
    [InlineData(HalfWidth, 0)]
    [InlineData(0, -HalfDepth)]
    [InlineData(0, HalfDepth)]
    [InlineData(HalfWidth, HalfDepth)]
    [InlineData(-HalfWidth, -HalfDepth)]
    public void Light_that_falls_off_with_the_square_goes_on_doing_so_to_the_edge(double x, double y)
    {
        var map = LightBox.Prepare(Studio.Panel(), Studio.BlackGround, Grid).Illuminate([Studio.Flash(size: 0.001)]);

        (At(map, x, y) / At(map, 0, 0)).Should().BeApproximately(Math.Pow(0.4 / Math.Sqrt((0.4 * 0.4) + (x * x) + (y * y)), 4), 0.01 * 0.4);
    }

    // The other route: points right there, none of them carried on. Three stops, as the grid's outermost points stand 12.5 mm off in the steepest part of the shadow;
    // what counts is that the sheet over a rail is told as dark, and not as a place where no light at all arrives.
    [Theory]
    [InlineData(-1, 0)]
    [InlineData(1, 0)]
    [InlineData(0, -1)]
    [InlineData(0, 1)]
    public void The_sheet_over_a_rail_is_in_its_shadow_and_gets_what_light_the_skirts_throw_there(int right, int back)
    {
        Emitter[] flash = [Studio.Flash(z: 0.05)];
        var map = LightBox.Prepare(Studio.Panel(), Railed, Grid).Illuminate(flash);
        var (x, y) = (right * (HalfWidth - 0.001), back * (HalfDepth - 0.001));
        var there = LightBox.At(Studio.Panel(), Railed, [(new Position(x, y, 0.5), -Direction.Up)]).Try(flash[0]).At(1);

        var stops = Math.Log2(At(map, x, y) / At(map, 0, 0));

        stops.Should().BeLessThan(-2, "it lies in the shadow");
        (Math.Log2(Exposure(map, x, y)) - Math.Log2(there.Direct[0] + there.Interreflected[0])).Should().BeInRange(-3, 3);
    }

    [Fact]
    public void No_place_on_a_sheet_between_white_skirts_is_without_any_light()
    {
        var map = LightBox.Prepare(Studio.Panel(), Railed, Grid).Illuminate([Studio.Flash(z: 0.05)]);

        Gen.Select(Gen.Double[-HalfWidth, HalfWidth], Gen.Double[-HalfDepth, HalfDepth]).Sample((x, y) => At(map, x, y) > 0 && At(map, x, y) < 1.05 * At(map, 0, 0));
    }

    private static PipeObstacle Rail(int fromRight, int fromBack, int toRight, int toBack) => new(
        new Position(fromRight * (HalfWidth - 0.0125), fromBack * (HalfDepth - 0.0125), 0.4835), new Position(toRight * (HalfWidth - 0.0125), toBack * (HalfDepth - 0.0125), 0.4835),
        Length.FromMillimeters(25));

    private static double At(LightMap map, double x, double y) =>
        map.LuminanceTime(Length.FromMeters(x), Length.FromMeters(y + HalfDepth), Direction.Up);

    // A matt sheet sends out L = T·H/π.
    private static double Exposure(LightMap map, double x, double y) => At(map, x, y) * Math.PI / map.Panel.Transmittance;
}
