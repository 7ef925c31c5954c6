using StudioKit.Physics.Daylight;
using UnitsNet;

namespace StudioKit.Physics.Tests.Daylight;

/// <summary>Rising, setting and twilight.</summary>
public sealed class SunCrossingsTests
{
    /// <summary>
    /// London, 21 June 2025, 51.5° N 0.125° W: 04:42:38 and 21:22:06 at UTC + 1 h, a table of daylight for the Houses of Parliament; Sydney, 24 March 2013: 07:01 and 19:01 at UTC + 11 h, from a note on the
    /// equinox; Aberdeen and London, 18 March 2011: 06:17 and 18:17, 06:09 and 18:09, from a list of towns.
    /// </summary>
    /// <remarks>Two such tables for London differ by a minute in the length of the day, as they take other refractions; a town is some kilometres wide, and the lists are rounded to a minute.</remarks>
    [Theory]
    [InlineData(51.5, -0.125, "2025-06-21", 1, (4 * 60) + 42.63, (21 * 60) + 22.1, 0.6)]
    [InlineData(-33.87, 151.21, "2013-03-24", 11, (7 * 60) + 1, (19 * 60) + 1, 1.1)]
    [InlineData(57.15, -2.1, "2011-03-18", 0, (6 * 60) + 17, (18 * 60) + 17, 1.1)]
    [InlineData(51.5, -0.12, "2011-03-18", 0, (6 * 60) + 9, (18 * 60) + 9, 1.1)]
    public void Sunrise_and_sunset_agree_with_published_times(double latitude, double longitude, string date, double offset, double rises, double sets, double within)
    {
        var day = Of(Place(latitude, longitude), DateOnly.Parse(date, System.Globalization.CultureInfo.InvariantCulture), offset * 60, SunCrossings.Horizon);

        day.Select(crossing => crossing.Rises).Should().Equal(true, false);
        day[0].Minute.Should().BeApproximately(rises, within);
        day[1].Minute.Should().BeApproximately(sets, within);
    }

    /// <summary>
    /// Worked example of the solar position algorithm of Reda and Andreas (2004) for Golden: sunrise of 17 October 2003 at 13:12:43 UT, and within the same day of Universal
    /// Time, so on the evening before by the clocks there, sunset at 00:20:19 UT.
    /// </summary>
    /// <remarks>0.01° of the sun's place, at its rise of 11° an hour, are 3 s.</remarks>
    [Fact]
    public void Sunrise_and_sunset_over_Golden_are_when_the_published_example_has_them()
    {
        var day = SunCrossings.Of(Place(39.742476, -105.1786), new DateOnly(2003, 10, 17), 0, 1440, SunCrossings.Horizon);

        day.Select(crossing => crossing.Rises).Should().Equal(false, true);
        day[0].Minute.Should().BeApproximately(20 + (19 / 60.0), 0.1);
        day[1].Minute.Should().BeApproximately((13 * 60) + 12 + (43 / 60.0), 0.1);
    }

    // Beyond the polar circle: at Christmas and midsummer of 70° the sun's noon and midnight heights are -3.4° and +3.4°.
    [Theory]
    [InlineData(70, "2026-12-21", false)]
    [InlineData(70, "2026-06-21", true)]
    [InlineData(-70, "2026-12-21", true)]
    [InlineData(-70, "2026-06-21", false)]
    [InlineData(90, "2026-06-21", true)]
    [InlineData(-90, "2026-06-21", false)]
    public void In_polar_day_and_night_the_sun_neither_rises_nor_sets(double latitude, string date, bool up)
    {
        var day = DateOnly.Parse(date, System.Globalization.CultureInfo.InvariantCulture);

        Of(Place(latitude, 20), day, 0, SunCrossings.Horizon).Should().BeEmpty();
        (SolarPosition.At(Place(latitude, 20), day, 0).Height > SunCrossings.Horizon).Should().Be(up);
    }

    // The polar night of 70° still has its civil twilight at noon, as the sun comes up to -3.4°.
    [Fact]
    public void A_polar_night_has_its_twilight() =>
        Of(Place(70, 0), new DateOnly(2026, 12, 21), 0, SunCrossings.CivilTwilight).Select(crossing => crossing.Rises).Should().Equal(true, false);

    // Half a year apart the declination has the other sign but for what the year's 365.24 days and the orbit's shape leave over: some 0.5° at the equinoxes, 4 min of day at 55°.
    [Fact]
    public void A_day_here_is_as_long_as_one_half_a_year_later_on_the_other_half_of_the_globe() =>
        Gen.Select(Gen.Double[0, 55], Gen.Double[-120, 120], Gen.Int[0, 364]).Sample((latitude, longitude, day) =>
        {
            var date = new DateOnly(2026, 1, 1).AddDays(day);
            Length(Place(latitude, longitude), date).Should().BeApproximately(Length(Place(-latitude, longitude), HalfAYearLater(date)), 8);
        });

    // At the equator a day is twelve hours and what the sun's width and refraction add, 2·0.833°/cos δ: 6.7 to 7.3 min; true noon moves by up to half a minute a day.
    [Fact]
    public void On_the_equator_all_days_are_alike() => Gen.Int[0, 364].Sample(day =>
        Length(Place(0, 0), new DateOnly(2026, 1, 1).AddDays(day)).Should().BeInRange((12 * 60) + 6.4, (12 * 60) + 7.6));

    [Fact]
    public void Twilight_begins_before_sunrise_and_ends_after_sunset() => Gen.Select(Gen.Double[-45, 45], Gen.Double[-120, 120], Gen.Int[0, 364]).Sample((latitude, longitude, day) =>
    {
        var (place, date) = (Place(latitude, longitude), new DateOnly(2026, 1, 1).AddDays(day));
        var times = new[] { SunCrossings.NauticalTwilight, SunCrossings.CivilTwilight, SunCrossings.Horizon }.Select(height => Local(place, date, height)).ToList();

        times.Select(pair => pair[0].Minute).Should().BeInAscendingOrder();
        times.Select(pair => pair[1].Minute).Should().BeInDescendingOrder();
    });

    [Fact]
    public void A_span_without_end_is_refused() =>
        FluentActions.Invoking(() => SunCrossings.Of(Place(0, 0), default, 0, double.PositiveInfinity, Angle.Zero)).Should().Throw<ArgumentOutOfRangeException>();

    private static double Length(GeographicPlace place, DateOnly date) => Local(place, date, SunCrossings.Horizon) is [var rise, var set] ? set.Minute - rise.Minute : double.NaN;

    // By the sun's own clock, so that a day is never cut in two.
    private static IReadOnlyList<(double Minute, bool Rises)> Local(GeographicPlace place, DateOnly date, Angle height) => Of(place, date, 4 * place.Longitude.Degrees, height);

    // When the sun has gone half round: its longitude, and not the days, decide.
    private static DateOnly HalfAYearLater(DateOnly date)
    {
        var declination = Declination(date);
        return Enumerable.Range(170, 26).Select(days => date.AddDays(days)).MinBy(other => Math.Abs(Declination(other) + declination));
    }

    private static double Declination(DateOnly date) => SolarPosition.Apparent(SolarPosition.JulianDay(date, 720)).Declination.Degrees;

    private static IReadOnlyList<(double Minute, bool Rises)> Of(GeographicPlace place, DateOnly date, double offset, Angle height) =>
        [.. SunCrossings.Of(place, date, -offset, 1440 - offset, height).Select(crossing => (crossing.Minute + offset, crossing.Rises))];

    private static GeographicPlace Place(double latitude, double longitude) => new(Angle.FromDegrees(latitude), Angle.FromDegrees(longitude));
}
