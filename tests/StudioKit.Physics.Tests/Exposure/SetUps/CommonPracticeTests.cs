using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Physics.Tests.Exposure.SetUps;

/// <summary>Settings that practice arrives at (common practice, no source). The plan must land within a stop; the scenes say what was assumed.</summary>
public sealed class CommonPracticeTests
{
    [Theory]
    [InlineData(400)]
    [InlineData(500)]
    public void White_background_at_life_size_takes_a_fifth_below_and_a_little_less_above(double iso)
    {
        var solved = WhiteBackgroundSetUp.Solve(Scenes.White with { Camera = Scenes.White.Camera with { Iso = new IsoSpeed(iso) } });

        solved.Missed.Should().BeEmpty();
        solved.Camera.Iso.Nominal.Should().Be(new IsoSpeed(iso).Nominal);
        StopsFrom(solved.Lights[0], 1 / 5.0).Should().BeInRange(-1, 1);
        StopsFrom(solved.Lights[1], 1 / 6.4).Should().BeInRange(-1, 1);
        solved.Lights[1].Power.Power.Fraction.Should().BeLessThan(solved.Lights[0].Power.Power.Fraction);
    }

    [Fact]
    public void Dark_background_in_forest_shade_goes_black_with_a_fifth_and_a_rim_of_a_sixth()
    {
        var solved = DarkBackgroundSetUp.Solve(Scenes.Dark);

        solved.Missed.Should().BeEmpty();
        solved.Camera.Shutter.Nominal.Should().Be("1/200 s");
        solved.Camera.Iso.Nominal.Should().Be("ISO 640");
        solved.AmbientLevel.Value.Should().BeLessThanOrEqualTo(-4);
        StopsFrom(solved.Lights[0], 1 / 5.0).Should().BeInRange(-1, 1);
        StopsFrom(solved.Lights[1], 1 / 6.4).Should().BeInRange(-1, 1);
    }

    // Last light in the open is taken as EV 10, day's end under trees as EV 9, the middle of the scene table's forest interior.
    [Theory]
    [InlineData(10, -0.3333, 1250)]
    [InlineData(9, -2, 2500)]
    public void Dusk_with_fill_asks_for_the_ISO_that_practice_finds(double ev, double fill, double iso)
    {
        var solved = LowLightFillSetUp.Solve(Scenes.Dusk with { Ambient = new ExposureValue(ev), FillLevel = new Stops(fill) });

        solved.Missed.Should().BeEmpty();
        solved.Camera.Shutter.Nominal.Should().Be("1/60 s");
        Math.Log2(solved.Camera.Iso.Value / iso).Should().BeInRange(-1, 1);
        solved.Lights[0].Power.Level.Value.Should().BeApproximately(fill, (1.0 / 6) + 1e-6);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(1.5)]
    [InlineData(2)]
    public void A_polariser_costs_its_stops_of_ISO(double loss)
    {
        var bare = LowLightFillSetUp.Solve(Scenes.Dusk with { Ambient = new ExposureValue(11) });
        var polarised = LowLightFillSetUp.Solve(Scenes.Dusk with
        {
            Ambient = new ExposureValue(11),
            Camera = Scenes.Dusk.Camera with { FilterLoss = new Stops(loss) },
        });
        (polarised.IsoAboveBase - bare.IsoAboveBase).Value.Should().BeApproximately(loss, (1.0 / 6) + 1e-6);
    }

    private static double StopsFrom(LightSolution light, double practice) => Math.Log2(light.Power.Power.Fraction / practice);
}
