using StudioKit.Physics.Daylight;
using UnitsNet;

namespace StudioKit.Physics.Tests.Daylight;

/// <summary>Where the sun stands.</summary>
public sealed class SolarPositionTests
{
    private static readonly DateOnly LeapDay = new(2024, 2, 29);

    private static readonly Gen<GeographicPlace> Anywhere = Places(-90, 90);
    private static readonly Gen<DateOnly> AnyDate = Gen.Int[0, 73048].Select(days => new DateOnly(1901, 1, 1).AddDays(days));

    // Meeus, ch. 7: 2000 January 1.5, 1987 January 27.0 and 1988 June 19.5.
    [Theory]
    [InlineData(2000, 1, 1, 720, 2451545)]
    [InlineData(1987, 1, 27, 0, 2446822.5)]
    [InlineData(1988, 6, 19, 720, 2447332)]
    public void Julian_days_agree_with_Meeus_chapter_7(int year, int month, int day, double minutes, double expected) =>
        SolarPosition.JulianDay(new DateOnly(year, month, day), minutes).Should().Be(expected);

    // Meeus, example 25.a, as public implementations of it print it: 13h 13m 31.4s (198.38083°) and -7°47'06" (-7.78507°); half the last digit.
    [Fact]
    public void The_apparent_position_agrees_with_Meeus_example_25a()
    {
        var (rightAscension, declination) = SolarPosition.Apparent(2448908.5);

        rightAscension.Degrees.Should().BeApproximately(198.38083, 0.00005);
        declination.Degrees.Should().BeApproximately(-7.78507, 0.00005);
    }

    // The same instant by the full theory, example 25.b: the low accuracy is 0.01°.
    [Fact]
    public void The_apparent_position_is_within_its_accuracy_of_the_full_theory_in_Meeus_example_25b()
    {
        var (rightAscension, declination) = SolarPosition.Apparent(2448908.5);

        rightAscension.Degrees.Should().BeApproximately((13 + (13 / 60.0) + (30.749 / 3600)) * 15, 0.01);
        declination.Degrees.Should().BeApproximately(-(7 + (47 / 60.0) + (1.74 / 3600)), 0.01);
    }

    /// <summary>
    /// Worked example of the solar position algorithm of Reda and Andreas (2004): 39.742476° N, 105.1786° W, 17 October 2003, 12:30:30 at UTC − 7 h,
    /// azimuth 194.34024°, zenith 50.11162° with refraction at 820 hPa.
    /// </summary>
    /// <remarks>0.01° is the accuracy of our theory; at 820 hPa the air lifts by 0.004° less than at 1010 hPa, and the parallax is 0.002°.</remarks>
    [Fact]
    public void The_sun_over_Golden_stands_where_the_published_example_has_it()
    {
        var sun = SolarPosition.At(Place(39.742476, -105.1786), new DateOnly(2003, 10, 17), (19 * 60) + 30.5);

        sun.Azimuth.Degrees.Should().BeApproximately(194.34024, 0.01);
        (90 - sun.SeenHeight.Degrees).Should().BeApproximately(50.11162, 0.01);
        sun.Sinks.Should().BeTrue("it is past noon");
    }

    // At true noon the height is 90° less the distance of latitude and declination; the sun moves 0.25° a minute, and the height is even about noon.
    [Fact]
    public void At_noon_the_sun_stands_as_far_from_the_zenith_as_latitude_and_declination_are_apart() => Gen.Select(Places(-80, 80), AnyDate).Sample((place, date) =>
    {
        var noon = Noon(place, date);
        var declination = SolarPosition.Apparent(SolarPosition.JulianDay(date, noon)).Declination.Degrees;

        SolarPosition.At(place, date, noon).Height.Degrees.Should().BeApproximately(90 - Math.Abs(place.Latitude.Degrees - declination), 0.01);
    });

    // In two hours the declination changes by 0.03° at the most, which at these latitudes turns the azimuth by under 0.2°.
    [Fact]
    public void Morning_and_afternoon_are_mirrored_about_true_noon() => Gen.Select(Places(30, 65), AnyDate, Gen.Double[30, 60]).Sample((place, date, minutes) =>
    {
        var noon = Noon(place, date);
        var (before, after) = (SolarPosition.At(place, date, noon - minutes), SolarPosition.At(place, date, noon + minutes));

        (before.Azimuth.Degrees + after.Azimuth.Degrees).Should().BeApproximately(360, 0.4);
        before.Sinks.Should().BeFalse();
        after.Sinks.Should().BeTrue();
        after.Height.Degrees.Should().BeApproximately(before.Height.Degrees, 0.1);
    });

    // The earth turns by 15° an hour: a place 15° further east has the same sun an hour sooner, but for what the sun moves along its path in that hour (0.04°).
    [Fact]
    public void A_place_further_east_has_its_sun_sooner() => Gen.Select(Gen.Double[-60, 60], Gen.Double[-180, 165], AnyDate, Gen.Double[0, 1440]).Sample((latitude, longitude, date, minute) =>
    {
        var (west, east) = (SolarPosition.At(Place(latitude, longitude), date, minute), SolarPosition.At(Place(latitude, longitude + 15), date, minute - 60));

        east.Height.Degrees.Should().BeApproximately(west.Height.Degrees, 0.05);
    });

    // 180° east and west are one meridian.
    [Fact]
    public void The_date_line_has_one_sun() => Gen.Select(Gen.Double[-90, 90], AnyDate, Gen.Double[0, 1440]).Sample((latitude, date, minute) =>
    {
        var (east, west) = (SolarPosition.At(Place(latitude, 180), date, minute), SolarPosition.At(Place(latitude, -180), date, minute));

        east.Height.Degrees.Should().BeApproximately(west.Height.Degrees, 1e-6);
    });

    [Fact]
    public void Minutes_beyond_a_day_are_the_next_days() => Gen.Select(Anywhere, AnyDate, Gen.Double[0, 1440]).Sample((place, date, minute) =>
        SolarPosition.At(place, date, minute + 1440).Height.Degrees.Should().BeApproximately(SolarPosition.At(place, date.AddDays(1), minute).Height.Degrees, 1e-5));

    // The mean sun goes a quarter of a degree a minute, so from the day before the leap day to the day after it two days pass.
    [Fact]
    public void The_leap_day_is_a_day_of_its_own() =>
        (SolarPosition.JulianDay(LeapDay.AddDays(1), 0) - SolarPosition.JulianDay(LeapDay.AddDays(-1), 0)).Should().Be(2);

    [Fact]
    public void Heights_and_azimuths_are_within_their_circles() => Gen.Select(Anywhere, AnyDate, Gen.Double[-1440, 2880]).Sample((place, date, minute) =>
    {
        var sun = SolarPosition.At(place, date, minute);

        sun.Height.Degrees.Should().BeInRange(-90, 90);
        sun.Azimuth.Degrees.Should().BeInRange(0, 359.9999999999999);
    });

    [Theory]
    [InlineData(91, 0)]
    [InlineData(-91, 0)]
    [InlineData(0, 181)]
    [InlineData(0, -181)]
    public void A_place_off_the_globe_is_refused(double latitude, double longitude) =>
        FluentActions.Invoking(() => Place(latitude, longitude)).Should().Throw<ArgumentOutOfRangeException>();

    [Fact]
    public void A_time_that_is_no_number_is_refused() =>
        FluentActions.Invoking(() => SolarPosition.At(Place(0, 0), LeapDay, double.NaN)).Should().Throw<ArgumentOutOfRangeException>();

    private static GeographicPlace Place(double latitude, double longitude) => new(Angle.FromDegrees(latitude), Angle.FromDegrees(longitude));

    private static Gen<GeographicPlace> Places(double south, double north) => Gen.Select(Gen.Double[south, north], Gen.Double[-180, 180]).Select(Place);

    // An independent route to true noon: the middle of the two times at which the sun is at one height, by search over the heights alone.
    private static double Noon(GeographicPlace place, DateOnly date)
    {
        var (low, high) = (720 - (4 * place.Longitude.Degrees) - 60, 720 - (4 * place.Longitude.Degrees) + 60);
        for (var i = 0; i < 60; i++)
        {
            var (first, second) = (low + ((high - low) / 3), high - ((high - low) / 3));
            (low, high) = SolarPosition.At(place, date, first).Height < SolarPosition.At(place, date, second).Height ? (first, high) : (low, second);
        }

        return (low + high) / 2;
    }
}
