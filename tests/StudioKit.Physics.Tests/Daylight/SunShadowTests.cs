using StudioKit.Physics.Daylight;
using UnitsNet;

namespace StudioKit.Physics.Tests.Daylight;

/// <summary>Shadows and refraction.</summary>
public sealed class SunShadowTests
{
    // Right triangles of 45°, 30° and 60°.
    [Theory]
    [InlineData(45, 1)]
    [InlineData(30, 1.7320508)]
    [InlineData(60, 0.5773503)]
    [InlineData(90, 0)]
    public void A_shadow_is_as_long_as_its_triangle_says(double height, double expected) =>
        SunShadow.LengthOverHeight(Angle.FromDegrees(height)).Should().BeApproximately(expected, 1e-7);

    [Theory]
    [InlineData(90, 270)]
    [InlineData(180, 0)]
    [InlineData(270, 90)]
    [InlineData(360, 180)]
    public void A_shadow_points_away_from_the_sun(double sun, double shadow) => SunShadow.Direction(Angle.FromDegrees(sun)).Degrees.Should().Be(shadow);

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(91)]
    public void Without_a_sun_over_the_horizon_there_is_no_shadow(double height) =>
        FluentActions.Invoking(() => SunShadow.LengthOverHeight(Angle.FromDegrees(height))).Should().Throw<ArgumentOutOfRangeException>();

    // The textbook's round value for a body seen on the horizon is 34′ (Meeus, ch. 15); to one minute of arc, as the formula's form differs from the tables by 0.1′ and its pressure is rounded.
    [Fact]
    public void On_the_horizon_the_air_lifts_by_thirty_four_minutes_of_arc() => (AtmosphericRefraction.Lift(Angle.FromDegrees(-34 / 60.0)).Degrees * 60).Should().BeApproximately(34, 1);

    // At 45° the constant of refraction is 58.3″ (textbooks; from memory), taken at 1010 hPa and 10 °C.
    [Fact]
    public void Half_way_up_the_air_lifts_by_a_minute_of_arc() => (AtmosphericRefraction.Lift(Angle.FromDegrees(45)).Degrees * 3600).Should().BeApproximately(58.3, 3);

    [Fact]
    public void The_air_never_lowers_and_keeps_what_is_higher_higher() => Gen.Select(Gen.Double[-90, 90], Gen.Double[-90, 90]).Where((one, other) => one < other).Sample((low, high) =>
    {
        AtmosphericRefraction.Lift(Angle.FromDegrees(low)).Degrees.Should().BeInRange(0, 0.65);
        Seen(low).Should().BeLessThan(Seen(high) + 1e-9);

        static double Seen(double height) => height + AtmosphericRefraction.Lift(Angle.FromDegrees(height)).Degrees;
    });

    [Fact]
    public void A_height_beyond_the_zenith_is_refused() => FluentActions.Invoking(() => AtmosphericRefraction.Lift(Angle.FromDegrees(91))).Should().Throw<ArgumentOutOfRangeException>();
}
