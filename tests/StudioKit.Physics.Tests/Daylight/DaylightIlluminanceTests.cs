using StudioKit.Physics.Daylight;
using StudioKit.Physics.Exposure.Metering;
using UnitsNet;

namespace StudioKit.Physics.Tests.Daylight;

/// <summary>Light of sun and sky.</summary>
public sealed class DaylightIlluminanceTests
{
    private static readonly Gen<double> ByDay = Gen.Double[1, 90];
    private static readonly Gen<double> Any = Gen.Double[-18, 90];

    // Certification values of Janiczek and DeYoung (1987), table A, as a public transcription has them: the sun in the zenith, and as it sets at 0.0° to 0.05°.
    [Fact]
    public void Full_sun_in_the_zenith_agrees_with_JaniczekDeYoung1987_table_A() => Lux(90).Should().BeApproximately(123786, 10);

    // 697 lx at a height that the table rounds to nought: between -0.5° and 0.5°.
    [Fact]
    public void The_setting_sun_agrees_with_JaniczekDeYoung1987_table_A()
    {
        Lux(-0.5).Should().BeLessThan(697);
        Lux(0.5).Should().BeGreaterThan(697);
    }

    // Glossary of Meteorology (AMS), "civil twilight": 585 to 410 lx at sunset, 3.5 to 2 lx with the sun 6° under the horizon, both at heights without refraction.
    [Theory]
    [InlineData(-50 / 60.0, 410, 585)]
    [InlineData(-6, 2, 3.5)]
    public void Twilight_is_as_bright_as_the_Glossary_of_Meteorology_says(double height, double least, double most) => Lux(height).Should().BeInRange(least, most);

    /// <summary>
    /// The other published route: direct sun 127.5 klx·e^(−0.21/sin h)·sin h and sky 0.8 + 15.5·√sin h klx (IES 1984; the sky's constants from memory).
    /// Both are means of clear days, and their authors put single days within a factor of two.
    /// </summary>
    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(30)]
    [InlineData(45)]
    [InlineData(60)]
    [InlineData(90)]
    public void Clear_days_agree_with_the_illuminating_engineers_formula(double height)
    {
        var sine = Math.Sin(height * Math.PI / 180);
        var ies = (127500 * Math.Exp(-0.21 / sine) * sine) + 800 + (15500 * Math.Sqrt(sine));

        Lux(height).Should().BeInRange(ies * 0.75, ies * 1.25);
    }

    // A published discussion of that formula works out 8821 fc of direct sun on the ground at 40° N, noon of the summer solstice: 94 950 lx at 73.44°, the earth then 3 % further off.
    [Fact]
    public void Direct_sun_at_a_summer_noon_agrees_with_a_worked_example()
    {
        var (sun, _) = DaylightIlluminance.Clear(Angle.FromDegrees(73.44));

        (sun.Lux * (1 - 0.034)).Should().BeApproximately(8821 * 10.7639, 94950 * 0.08);
    }

    // Overcast by the same engineers, 0.3 + 21·sin h klx (from memory), a mean of overcast days.
    [Theory]
    [InlineData(10)]
    [InlineData(30)]
    [InlineData(60)]
    [InlineData(90)]
    public void An_overcast_sky_of_the_illuminating_engineers_lies_within_what_clouds_are_expected_to_leave(double height)
    {
        var reading = LightMeter.FromIlluminance(Illuminance.FromLux(300 + (21000 * Math.Sin(height * Math.PI / 180)))).AtIso100;
        var expected = Expected(height, SkyState.Cloud);

        reading.Should().BeInRange(expected.Darkest.AtIso100, expected.Brightest.AtIso100);
    }

    // The scene-light table of the standard exposure guide has EV 15 in sun and EV 12 in open shade or under clouds, for the greater part of the day.
    [Fact]
    public void A_summers_day_reads_as_exposure_guides_say()
    {
        Expected(50, SkyState.Sun).Typical.AtIso100.Should().BeApproximately(15, 0.5);
        Expected(50, SkyState.Shade).Typical.AtIso100.Should().BeApproximately(12, 0.5);
        Expected(20, SkyState.Cloud).Typical.AtIso100.Should().BeApproximately(12, 0.5);
    }

    [Fact]
    public void Light_grows_with_the_height_of_the_sun_from_dusk_to_noon() => Gen.Select(Any, Any).Sample((one, other) =>
    {
        foreach (var state in Enum.GetValues<SkyState>())
        {
            Expected(Math.Max(one, other), state).Typical.AtIso100.Should().BeGreaterThanOrEqualTo(Expected(Math.Min(one, other), state).Typical.AtIso100);
        }
    });

    [Fact]
    public void What_is_expected_lies_within_its_spread() => Gen.Select(Any, Gen.Enum<SkyState>()).Sample((height, state) =>
    {
        var expected = Expected(height, state);

        expected.Darkest.AtIso100.Should().BeLessThan(expected.Typical.AtIso100);
        expected.Brightest.AtIso100.Should().BeGreaterThan(expected.Typical.AtIso100);
    });

    [Fact]
    public void Nothing_is_brighter_than_a_world_without_air_and_clouds_only_take() => ByDay.Sample(height =>
    {
        var outside = 133775 * Math.Sin(height * Math.PI / 180);
        var (sun, sky) = DaylightIlluminance.Clear(Angle.FromDegrees(height));

        sun.Lux.Should().BeLessThan(outside);
        LightMeter.IlluminanceOf(Expected(height, SkyState.Sun).Brightest).Lux.Should().BeLessThanOrEqualTo((outside + (2 * sky.Lux)) * 1.0000001);
        Expected(height, SkyState.Cloud).Brightest.AtIso100.Should().BeLessThan(Expected(height, SkyState.Sun).Typical.AtIso100);
        Expected(height, SkyState.Shade).Typical.AtIso100.Should().BeLessThan(Expected(height, SkyState.Sun).Typical.AtIso100);
    });

    // Under the horizon there is no sun to be kept off.
    [Fact]
    public void At_night_shade_is_as_bright_as_the_open() => Gen.Double[-18, 0].Sample(height =>
        Expected(height, SkyState.Shade).Typical.Should().Be(Expected(height, SkyState.Sun).Typical));

    [Theory]
    [InlineData(-18.1)]
    [InlineData(90.1)]
    public void A_sun_deeper_than_twilight_or_over_the_zenith_is_refused(double height) =>
        FluentActions.Invoking(() => Expected(height, SkyState.Sun)).Should().Throw<ArgumentOutOfRangeException>();

    private static double Lux(double height)
    {
        var (sun, sky) = DaylightIlluminance.Clear(Angle.FromDegrees(height));
        return sun.Lux + sky.Lux;
    }

    private static ExpectedDaylight Expected(double height, SkyState state) => DaylightIlluminance.Expected(Angle.FromDegrees(height), state);
}
