using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Obstacles;
using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Standing;

public sealed class LightCoverTests
{
    private static readonly Position Subject = new(0, 0, 0.5);

    /// <summary>By triangles: from a subject 50 mm before a lens of 60 mm, all within atan(30/50) = 31.0° of its axis is hidden; a light of 1 mm shows it.</summary>
    [Theory]
    [InlineData(30, 1)]
    [InlineData(32, 0)]
    public void A_lens_hides_what_stands_within_the_cone_of_its_rim(double fromAxis, double share) =>
        LightCover.Share(Spot(fromAxis), Subject, [Lens(0.05, 0.06)]).Should().BeApproximately(share, 1e-9);

    /// <summary>A light whose middle stands right at the rim is half hidden, but for how the rim curves over it: by 0.3 mm over 5 mm, a few hundredths.</summary>
    [Fact]
    public void A_light_at_the_rim_is_half_hidden()
    {
        var light = LightOnSurfaceTests.Softbox(LightDirectionTests.At(0, 90 - (Math.Atan(0.6) * 180 / Math.PI)), 0.4, 0.01, 0.01);

        LightCover.Share(light, Subject, [Lens(0.05, 0.06)]).Should().BeApproximately(0.5, 0.1);
    }

    /// <summary>Monte Carlo: points drawn on the front, rays by the closed form of where they meet the plane of the lens's front.</summary>
    [Theory]
    [InlineData(35)]
    [InlineData(45)]
    public void The_share_hidden_is_that_of_rays_drawn_at_random(double fromAxis)
    {
        var light = LightOnSurfaceTests.Softbox(LightDirectionTests.At(-90, 90 - fromAxis), 0.4);
        var chance = new Random(3);
        const int draws = 100_000;
        var hidden = Enumerable.Range(0, draws).Count(_ =>
        {
            var place = light.Centre
                .Along(light.Orientation.Across, (chance.NextDouble() - 0.5) * light.Width.Meters)
                .Along(light.Orientation.Along, (chance.NextDouble() - 0.5) * light.Height.Meters);
            var share = 0.05 / (place.Z - Subject.Z);
            return double.Hypot(place.X * share, place.Y * share) < 0.03;
        });

        // A lattice of 12 by 12 points sees an edge to a twelfth of a side, half of that on the mean.
        LightCover.Share(light, Subject, [Lens(0.05, 0.06)]).Should().BeApproximately((double)hidden / draws, 0.05);
    }

    [Fact]
    public void A_lens_that_stands_further_off_hides_no_more() => Gen.Select(Gen.Double[5, 80], Gen.Double[0.02, 0.2], Gen.Double[1.05, 2]).Sample((fromAxis, near, factor) =>
    {
        var light = LightOnSurfaceTests.Softbox(LightDirectionTests.At(-90, 90 - fromAxis), 0.6);

        LightCover.Share(light, Subject, [Lens(near * factor, 0.06)]).Should().BeLessThanOrEqualTo(LightCover.Share(light, Subject, [Lens(near, 0.06)]) + 1e-9);
    });

    /// <summary>Bodies are passed over at a glance that cannot reach between; here every ray is asked of every body.</summary>
    [Fact]
    public void What_is_hidden_is_what_the_rays_say_one_by_one() =>
        Gen.Select(Gen.Double[5, 90], Gen.Double[0.1, 0.6], Gen.Double[0.01, 0.4], Gen.Double[0.02, 0.3], Gen.Double[0.01, 0.2]).Sample((fromAxis, distance, size, near, diameter) =>
        {
            var light = LightOnSurfaceTests.Softbox(LightDirectionTests.At(-60, 90 - fromAxis), distance, size, size / 2);
            Obstacle[] bodies = [Lens(near, diameter), new PipeObstacle(new(near, 0.1, 0.6), new(near, -0.1, 0.6), Length.FromMeters(diameter / 5))];

            LightCover.Share(light, Subject, bodies).Should().BeApproximately(
                LightOnSurface.Points(light).Where(point => bodies.Any(body => body.Blocks(Subject, point.Place))).Sum(point => point.Weight), 1e-12);
        });

    [Fact]
    public void Nothing_hides_where_nothing_stands() => LightCover.Share(Spot(10), Subject, []).Should().Be(0);

    private static Emitter Spot(double fromAxis) => LightOnSurfaceTests.Softbox(LightDirectionTests.At(40, 90 - fromAxis), 0.4, 0.001, 0.001);

    // The camera looks straight down.
    private static BarrelObstacle Lens(double distance, double diameter) =>
        new(Subject with { Z = Subject.Z + distance }, Subject with { Z = Subject.Z + distance + 0.2 }, Length.FromMeters(diameter));
}
