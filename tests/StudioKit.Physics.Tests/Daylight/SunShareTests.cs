using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Metering;
using UnitsNet;

namespace StudioKit.Physics.Tests.Daylight;

/// <summary>Sun and sky in what a meter reads.</summary>
public sealed class SunShareTests
{
    // Full sun is three stops over open shade (exposure value table of the guide): an eighth is left to the sky.
    [Fact]
    public void In_full_sun_seven_eighths_are_the_sun() =>
        SunShare.Of(new ExposureValue(15), LightMeter.IlluminanceOf(SunShare.OpenShade)).Should().BeApproximately(7.0 / 8, 1e-12);

    [Fact]
    public void Where_the_sky_gives_all_there_is_no_sun() =>
        SunShare.Of(new ExposureValue(11), LightMeter.IlluminanceOf(SunShare.OpenShade)).Should().Be(0);

    // By hand: 0.8 · 0.1 + 0.2 · (1 − 0.5 · 0.9) = 0.19.
    [Theory]
    [InlineData(0.8, 0.1, 0.5, 0.19)]
    [InlineData(1, 0.25, 0.3, 0.25)]
    [InlineData(0, 0, 0.4, 0.6)]
    [InlineData(0.5, 1, 1, 1)]
    [InlineData(0.7, 0, 1, 0)]
    public void A_shade_takes_the_sun_by_its_cloth_and_the_sky_by_what_it_hides(double sun, double through, double hidden, double left) =>
        SunShare.Left(sun, through, hidden).Should().BeApproximately(left, 1e-12);

    [Fact]
    public void A_thicker_cloth_or_a_larger_one_leaves_no_more_light() => Gen.Select(Gen.Double[0, 1], Gen.Double[0, 0.9], Gen.Double[0, 0.9]).Sample(any =>
        SunShare.Left(any.Item1, any.Item2, any.Item3) <= SunShare.Left(any.Item1, any.Item2 + 0.1, any.Item3) + 1e-12
        && SunShare.Left(any.Item1, any.Item2, any.Item3 + 0.1) <= SunShare.Left(any.Item1, any.Item2, any.Item3) + 1e-12);

    [Theory]
    [InlineData(-0.1, 0.5, 0.5)]
    [InlineData(0.5, 1.1, 0.5)]
    [InlineData(0.5, 0.5, double.NaN)]
    public void Shares_outside_of_nought_and_one_are_refused(double sun, double through, double hidden) =>
        FluentActions.Invoking(() => SunShare.Left(sun, through, hidden)).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void A_sky_of_less_than_no_light_is_refused() =>
        FluentActions.Invoking(() => SunShare.Of(new ExposureValue(12), Illuminance.FromLux(-1))).Should().Throw<ArgumentOutOfRangeException>();
}
