using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Standing;

public sealed class MidwayIncidenceTests
{
    /// <summary>cos(γ/2) in closed form: 0°, 90°, 120° between light and lens.</summary>
    [Theory]
    [InlineData(0, 60, 0)]
    [InlineData(-90, 0, -0.5)]
    [InlineData(120, 0, -1)]
    public void What_a_direction_costs_is_the_cosine_of_half_its_angle_to_the_lens(double azimuth, double elevation, double stops) =>
        MidwayIncidence.Loss(LightDirectionTests.At(azimuth, elevation), [Angle.FromDegrees(elevation)]).Value.Should().BeApproximately(stops, 1e-9);

    /// <summary>Common practice, from memory: front light as it is, half a stop to one more for light from the side, one to two for light from behind at a slant.</summary>
    [Theory]
    [InlineData(0, 0, 0)]
    [InlineData(90, 0.5, 1)]
    [InlineData(135, 1, 2)]
    public void Exposure_is_opened_by_as_much_as_practice_does(double azimuth, double least, double most) =>
        (-MidwayIncidence.Loss(LightDirectionTests.At(azimuth, 0), [Angle.Zero]).Value).Should().BeInRange(least - 1e-9, most);

    /// <summary>
    /// Independent route: of many normals drawn over the sphere, the one that sees the worse of light and lens best faces midway. At 40,000 normals the
    /// nearest lies within about 1° of it, where the cosine is flat to 1e-3.
    /// </summary>
    [Theory]
    [InlineData(-90, 45, 30)]
    [InlineData(30, 45, 20)]
    [InlineData(150, 30, 10)]
    [InlineData(-45, 10, 90)]
    public void No_part_of_a_round_animal_does_better_by_light_and_lens_together(double azimuth, double elevation, double pitch)
    {
        var (light, camera) = (LightDirectionTests.At(azimuth, elevation), LightDirection.OfCamera(Angle.FromDegrees(pitch)));
        var chance = new Random(7);
        var best = Enumerable.Range(0, 40_000).Max(_ =>
        {
            var (z, turn) = ((2 * chance.NextDouble()) - 1, 2 * Math.PI * chance.NextDouble());
            var r = Math.Sqrt(1 - (z * z));
            double Cosine(LightDirection to) => (r * Math.Cos(turn) * to.Towards.X) + (r * Math.Sin(turn) * to.Towards.Y) + (z * to.Towards.Z);
            return Math.Min(Cosine(light), Cosine(camera));
        });

        MidwayIncidence.Cosine(light, camera).Should().BeApproximately(best, 0.015).And.BeGreaterThanOrEqualTo(best);
    }

    [Fact]
    public void Left_and_right_cost_the_same_and_nothing_costs_less_than_light_from_the_lens() => Gen.Select(LightDirectionTests.Any, Gen.Double[0, 90]).Sample((light, pitch) =>
    {
        Angle[] pitches = [Angle.FromDegrees(pitch)];
        var loss = MidwayIncidence.Loss(light, pitches).Value;

        loss.Should().BeInRange(-10, 0);
        MidwayIncidence.Loss(light with { Azimuth = -light.Azimuth }, pitches).Value.Should().BeApproximately(loss, 1e-9);
    });

    [Fact]
    public void Several_camera_angles_cost_their_mean()
    {
        var from = LightDirectionTests.At(-90, 45);
        double Of(params double[] pitches) => MidwayIncidence.Loss(from, [.. pitches.Select(pitch => Angle.FromDegrees(pitch))]).Value;

        Of(30, 60, 90).Should().BeApproximately((Of(30) + Of(60) + Of(90)) / 3, 1e-12);
    }

    [Fact]
    public void A_light_that_is_seen_from_nowhere_is_refused()
    {
        var loss = () => MidwayIncidence.Loss(LightDirectionTests.At(0, 0), []);

        loss.Should().Throw<ArgumentException>();
    }
}
