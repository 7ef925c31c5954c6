using StudioKit.Physics.Light;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>A bright sheet behind a subject lights its limb, where the surface stands square to the line of sight, and a rim of what the camera sees.</summary>
public sealed class EdgeSpillTests
{
    private static readonly Position Here = new(0, 0, 0);

    /// <summary>
    /// Howell's catalogue, configuration B-4: an element at c from a rectangle's corner, b along its own plane and a over it sees
    /// F = (atan(1/Y) − Y/√(X² + Y²)·atan(1/√(X² + Y²)))/2π, X = a/b, Y = c/b. The right limb sees two, above and below; what lies to its left is behind it.
    /// </summary>
    [Fact]
    public void A_limb_gets_what_configuration_B_4_says() =>
        Gen.Double[0.05, 1].Select(Gen.Double[0.05, 1], Gen.Double[0.05, 1], Gen.Double[0.02, 1], Gen.Double[0.05, 1]).Sample((right, below, above, distance, left) =>
        {
            var spill = EdgeSpill.On([Sheet(1, -left, right, -below, above, distance)], Here, Direction.Right);
            return Math.Abs(spill - (Math.PI * (Catalogue(right, above, distance) + Catalogue(right, below, distance)))) < 1e-10;
        });

    // A thousand rays by the cosine from each of some surfaces; F(1 − F)/n gives each its standard error, of which four are allowed.
    [Fact]
    public void Rays_that_are_followed_one_by_one_find_the_same_light()
    {
        var random = new Random(4);
        const int rays = 100_000;
        foreach (var facing in new[] { Direction.Right, Direction.Up, -Direction.Right, Direction.Of(0.8, -0.6, 0), Direction.Of(0.2, -0.3, 0.9), Direction.Back })
        {
            var sum = 0.0;
            for (var i = 0; i < rays; i++)
            {
                sum += Along(Cosine(random, facing), 0.2);
            }

            EdgeSpill.On(TwoParts, Here, facing).Should().BeApproximately(Math.PI * sum / rays, Math.PI * 4 * 3 * Math.Sqrt(0.25 / rays));
        }
    }

    [Fact]
    public void The_nearer_the_sheet_the_more_light_and_never_more_than_half_its_exitance() =>
        Gen.Double[0.05, 1].Select(Gen.Double[0.001, 0.5], Gen.Double[1.01, 3]).Sample((half, near, further) =>
        {
            var (close, far) = (Limb(near), Limb(near * further));
            return far < close && close < Math.PI / 2;

            double Limb(double distance) => EdgeSpill.On([Sheet(1, -half, half, -half, half, distance)], Here, Direction.Right);
        });

    [Fact]
    public void Close_before_the_sheet_a_limb_gets_half_of_its_exitance() =>
        EdgeSpill.On([Sheet(100, -1, 1, -1, 1, 1e-7)], Here, Direction.Up).Should().BeApproximately(50 * Math.PI, 1e-3);

    /// <summary>A surface that a plane without end stands before at an angle of 90° + φ gets (1 − sin φ)/2 of its exitance (half a sphere's cosine integral; Howell's C-9 for one point).</summary>
    [Fact]
    public void Round_a_cylinder_before_a_sheet_without_end_the_light_falls_by_the_sine() => Gen.Double[0.02, 0.98].Sample(share =>
    {
        var reach = EdgeSpill.Reach([Sheet(1, -1e5, 1e5, -1e5, 1e5, 1)], Here, Direction.Right, Direction.Back, share * Math.PI / 2);
        return Math.Abs(reach.Radians - Math.Asin(1 - share)) < 1e-4;
    });

    [Fact]
    public void At_the_edge_of_the_rim_the_light_is_down_to_its_level() => Gen.Double[0.05, 0.5].Select(Gen.Double[0.01, 0.3], Gen.Double[0.1, 0.9]).Sample((half, distance, share) =>
    {
        GlowingPatch[] sheet = [Sheet(3, -half, half, -half / 2, half, distance)];
        var level = EdgeSpill.On(sheet, Here, Direction.Up) * share;
        var reach = EdgeSpill.Reach(sheet, Here, Direction.Up, Direction.Back, level);
        return Math.Abs(EdgeSpill.On(sheet, Here, Direction.Of(0, -Math.Sin(reach.Radians), Math.Cos(reach.Radians))) - level) < 1e-4 * level / share;
    });

    [Fact]
    public void A_limb_that_gets_less_than_the_level_has_no_rim() =>
        EdgeSpill.Reach([Sheet(1, -0.2, 0.2, -0.2, 0.2, 0.3)], Here, Direction.Right, Direction.Back, 10).Radians.Should().Be(0);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(60, 0.25)]
    [InlineData(90, 0.5)]
    public void A_rim_is_as_wide_as_its_arc_seen_from_the_side(double degrees, double share) =>
        EdgeSpill.ShareOfDiameter(Angle.FromDegrees(degrees)).Should().BeApproximately(share, 1e-12);

    [Fact]
    public void Impossible_light_levels_and_rims_are_refused()
    {
        FluentActions.Invoking(() => EdgeSpill.On([Sheet(-1, -1, 1, -1, 1, 1)], Here, Direction.Up)).Should().Throw<ArgumentOutOfRangeException>();
        FluentActions.Invoking(() => EdgeSpill.On(null!, Here, Direction.Up)).Should().Throw<ArgumentNullException>();
        FluentActions.Invoking(() => EdgeSpill.Reach([], Here, Direction.Up, Direction.Back, 0)).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("level");
        FluentActions.Invoking(() => EdgeSpill.ShareOfDiameter(Angle.FromDegrees(91))).Should().Throw<ArgumentOutOfRangeException>().WithParameterName("reach");
    }

    private static readonly GlowingPatch[] TwoParts = [Sheet(3, -0.3, 0.1, -0.1, 0.4, 0.2), Sheet(1, 0.1, 0.5, -0.1, 0.4, 0.2)];

    private static GlowingPatch Sheet(double luminance, double left, double right, double below, double above, double distance) =>
        new(luminance, new(left, distance, below), new(right, distance, below), new(right, distance, above), new(left, distance, above));

    private static double Catalogue(double a, double b, double c)
    {
        var (x, y) = (a / b, c / b);
        var root = Math.Sqrt((x * x) + (y * y));
        return (Math.Atan(1 / y) - (y / root * Math.Atan(1 / root))) / (2 * Math.PI);
    }

    // Luminance of what a ray meets in the plane of the two parts.
    private static double Along(Direction ray, double distance)
    {
        if (ray.Y <= 0)
        {
            return 0;
        }

        var (x, z) = (ray.X / ray.Y * distance, ray.Z / ray.Y * distance);
        return z is < -0.1 or > 0.4 || x is < -0.3 or > 0.5 ? 0 : x < 0.1 ? 3 : 1;
    }

    // A point even on the sphere, added to the normal: its direction goes by the cosine.
    private static Direction Cosine(Random random, Direction normal)
    {
        var (z, turn) = ((2 * random.NextDouble()) - 1, 2 * Math.PI * random.NextDouble());
        var r = Math.Sqrt(1 - (z * z));
        return Direction.Of(normal.X + (r * Math.Cos(turn)), normal.Y + (r * Math.Sin(turn)), normal.Z + z);
    }
}
