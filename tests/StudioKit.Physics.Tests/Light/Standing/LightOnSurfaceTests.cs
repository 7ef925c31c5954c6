using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Standing;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Standing;

public sealed class LightOnSurfaceTests
{
    private static readonly Position Subject = new(0, 0, 0.5);

    /// <summary>
    /// Independent route, Monte Carlo: rays leave random points of a softbox's matt front by the cosine, and those that come down on a small square of the
    /// sheet are counted. Φ = π·I₀ over the square's area is its luminous exposure. The square of 30 mm sees the front's light vary by a few thousandths;
    /// some 8,000 hits leave 1.1 %, four of which are allowed.
    /// </summary>
    [Theory]
    [InlineData(-90, 45, 0)]
    [InlineData(30, 60, 0.05)]
    [InlineData(180, 35, -0.05)]
    public void The_upper_flashs_light_on_the_sheet_is_what_a_shower_of_rays_brings_there(double azimuth, double elevation, double aside)
    {
        const int rays = 3_000_000;
        const double half = 0.015;
        var light = Softbox(LightDirectionTests.At(azimuth, elevation), 0.4);
        var (chance, hits) = (new Random(5), 0);
        for (var i = 0; i < rays; i++)
        {
            var start = light.Centre
                .Along(light.Orientation.Across, (chance.NextDouble() - 0.5) * light.Width.Meters)
                .Along(light.Orientation.Along, (chance.NextDouble() - 0.5) * light.Height.Meters);
            var (square, turn) = (chance.NextDouble(), 2 * Math.PI * chance.NextDouble());
            var (sine, cosine) = (Math.Sqrt(square), Math.Sqrt(1 - square));
            double Part(Func<Direction, double> of) => (sine * Math.Cos(turn) * of(light.Orientation.Across)) + (sine * Math.Sin(turn) * of(light.Orientation.Along)) + (cosine * of(light.Orientation.Axis));
            var (x, y, z) = (Part(way => way.X), Part(way => way.Y), Part(way => way.Z));
            var t = (Subject.Z - start.Z) / z;
            hits += z < 0 && Math.Abs(start.X + (t * x) - aside) < half && Math.Abs(start.Y + (t * y)) < half ? 1 : 0;
        }

        var shower = Math.PI * light.AxialIntensityTime * hits / rays / (4 * half * half);

        LightOnSurface.Exposure(light, Subject with { X = aside }, Direction.Up).Should().BeApproximately(shower, shower * 4 / Math.Sqrt(hits));
    }

    /// <summary>A surface that faces a matt front gets what Howell's rectangle gives it.</summary>
    [Fact]
    public void A_surface_that_faces_a_front_gets_what_the_rectangles_form_factor_says() => Gen.Select(LightDirectionTests.Any, Gen.Double[0.15, 2]).Sample((from, distance) =>
    {
        var light = Softbox(from, distance);
        var factor = NearField.RectangleFactor(light.Width, light.Height, Length.FromMeters(distance));

        LightOnSurface.Exposure(light, Subject, from.Towards).Should().BeApproximately(factor / (distance * distance), 1e-3 * factor / (distance * distance));
    });

    /// <summary>Lambert's cosine: a small far light on the level sheet gives the sine of its elevation.</summary>
    [Theory]
    [InlineData(90, 1)]
    [InlineData(30, 0.5)]
    [InlineData(45, 0.70710678)]
    public void A_far_light_gives_the_level_sheet_the_sine_of_its_elevation(double elevation, double share)
    {
        var light = Softbox(LightDirectionTests.At(20, elevation), 50);

        LightOnSurface.Exposure(light, Subject, Direction.Up).Should().BeApproximately(share / 2500, share / 2500 * 1e-4);
    }

    [Fact]
    public void A_surface_that_faces_away_gets_nothing() =>
        LightOnSurface.Exposure(Softbox(LightDirectionTests.At(0, 80), 0.6), Subject, -Direction.Up).Should().Be(0);

    [Fact]
    public void A_surface_that_throws_back_more_than_it_gets_is_refused()
    {
        var luminance = () => LightOnSurface.Luminance(1, 1.1);

        luminance.Should().Throw<ArgumentOutOfRangeException>();
    }

    internal static Emitter Softbox(LightDirection from, double distance, double width = 0.2, double height = 0.15)
    {
        var centre = from.PlaceFrom(Subject, Length.FromMeters(distance));
        return new Emitter
        {
            Centre = centre,
            Orientation = Orientation.AimedAt(centre, Subject),
            Width = Length.FromMeters(width),
            Height = Length.FromMeters(height),
            Lobe = CosineLobe.Lambertian,
            AxialIntensityTime = 1,
        };
    }
}
