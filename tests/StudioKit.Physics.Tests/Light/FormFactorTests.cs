using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Solving;

namespace StudioKit.Physics.Tests.Light;

/// <summary>Values of J. R. Howell, A Catalog of Radiation Heat Transfer Configuration Factors, evaluated by an independent program.</summary>
public sealed class FormFactorTests
{
    // The values are given to five digits, so half of the last one and a little for its rounding.
    private const double Tolerance = 1e-5;

    [Theory]
    [InlineData(1, 1, 0.19982)]
    [InlineData(2, 1, 0.28588)]
    [InlineData(1.2, 0.9, 0.20823)]
    public void Opposed_rectangles_agree_with_configuration_C_11(double width, double depth, double published) =>
        Opposed(width, depth).Should().BeApproximately(published, Tolerance);

    [Theory]
    [InlineData(1, 1, 0.20004)]
    [InlineData(2, 1, 0.23285)]
    [InlineData(0.5, 1, 0.14619)]
    public void Perpendicular_rectangles_agree_with_configuration_C_14(double height, double depth, double published) =>
        Perpendicular(depth, height).Should().BeApproximately(published, Tolerance);

    [Fact]
    public void Two_short_walls_of_a_cube_and_its_lid_share_all_the_light_of_its_floor() =>
        (Opposed(1, 1) + (4 * Perpendicular(1, 1))).Should().BeApproximately(1, 1e-12);

    [Fact]
    public void Exchange_between_perpendicular_rectangles_is_reciprocal() =>
        Gen.Double[0.1, 5].Select(Gen.Double[0.1, 5]).Sample((depth, height) =>
        {
            var there = depth * Perpendicular(depth, height);
            var back = height * Perpendicular(height, depth);
            return Math.Abs(there - back) < 1e-10;
        });

    [Fact]
    public void A_rectangle_seen_from_a_point_agrees_with_Lamberts_polygon_sum() =>
        Gen.Double[0.1, 3].Select(Gen.Double[0.1, 3], Gen.Double[0.05, 3]).Sample((width, depth, distance) =>
        {
            var (x, y) = (width / 2, depth / 2);
            var patch = new Patch(BoxFace.Floor, new(-x, -y, 0), new(x, -y, 0), new(x, y, 0), new(-x, y, 0), 0);
            var polygon = PolygonFactor.From(new Position(0, 0, distance), -Direction.Up, patch);
            return Math.Abs(polygon - FormFactor.PointToRectangle(width, depth, distance)) < 1e-10;
        });

    [Fact]
    public void A_large_near_rectangle_fills_a_points_view() =>
        FormFactor.PointToRectangle(1000, 1000, 0.001).Should().BeApproximately(1, 1e-9);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void An_impossible_side_is_refused(double side)
    {
        var wide = () => FormFactor.PointToRectangle(side, 1, 1);
        var deep = () => FormFactor.PointToRectangle(1, side, 1);

        wide.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("width");
        deep.Should().Throw<ArgumentOutOfRangeException>().WithParameterName("depth");
    }

    [Fact]
    public void The_vector_arctangent_agrees_with_the_scalar_one() =>
        Gen.Double[-1e3, 1e3].Sample(x =>
            Math.Abs(VectorMath.Atan(new System.Numerics.Vector<double>(x))[0] - Math.Atan(x)) < 2e-11);

    // Equal rectangles face to face, one apart: of the sixteen pairs of corners all that differ in neither way are alike, and so on.
    private static double Opposed(double width, double depth)
    {
        double Corner(double x, double y) => FormFactor.ParallelCorner(x, y, 1);
        return 4 * (Corner(width, depth) - Corner(0, depth) - Corner(width, 0) + Corner(0, 0)) / (width * depth);
    }

    // From one rectangle onto another that stands on their common edge of one.
    private static double Perpendicular(double depth, double height)
    {
        double Ends(double y, double z) => 2 * (FormFactor.PerpendicularCorner(1, y, z) - FormFactor.PerpendicularCorner(0, y, z));
        return (Ends(0, 0) - Ends(depth, 0) - Ends(0, height) + Ends(depth, height)) / depth;
    }
}
