using StudioKit.Kits;
using StudioKit.Planning;
using StudioKit.Sheets.Documents;
using StudioKit.Sheets.Drawings;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Sheets.Tests.Documents;

/// <summary>The sheet of the day.</summary>
public sealed class DaySheetTests
{
    // A kit for which nothing but the day is worked out.
    private const string Text = """
        kit: Fen
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses: [{name: reed, focal-length: 55 mm}]
        site: {SITE}

        """;

    [Theory]
    [InlineData(0, "0°, north")]
    [InlineData(22, "22°, north")]
    [InlineData(23, "23°, north-east")]
    [InlineData(90, "90°, east")]
    [InlineData(180, "180°, south")]
    [InlineData(247, "247°, south-west")]
    [InlineData(248, "248°, west")]
    [InlineData(359.7, "0°, north")]
    public void Directions_are_told_in_degrees_and_by_compass(double azimuth, string expected) => DayText.Direction(Angle.FromDegrees(azimuth)).Should().Be(expected);

    [Theory]
    [InlineData(0, "00:00")]
    [InlineData(785, "13:05")]
    [InlineData(1470, "00:30 (next day)")]
    public void Times_past_midnight_name_the_next_day(int minute, string expected) => DayText.Time(minute).Should().Be(expected);

    [Theory]
    [InlineData("date: 2026-06-14, latitude: 52.3°, longitude: 5.1°, utc-offset: +2 h", "14 June 2026 at 52.3° N, 5.1° E, clock at UTC+2")]
    [InlineData("date: 2024-02-29, latitude: 33.9° S, longitude: 71.5° W, utc-offset: -3 h 30 min", "29 February 2024 at 33.9° S, 71.5° W, clock at UTC−3:30")]
    [InlineData("date: 2026-06-14, latitude: 52.3°, longitude: 5.1°", "14 June 2026 at 52.3° N, 5.1° E, clock at UTC+0 by its longitude, summer time left out")]
    public void The_day_says_where_and_by_which_clock_it_is(string site, string expected) => DayText.Title(Day(site)).Should().Be(expected);

    [Theory]
    [InlineData("date: 2026-06-14, latitude: 75°, longitude: 20°", "The sun does not set.")]
    [InlineData("date: 2026-12-14, latitude: 75°, longitude: 20°", "The sun does not rise.")]
    public void Polar_days_and_nights_are_told(string site, string expected) => DayText.Events(Day(site)).Should().EndWith(expected);

    // North of the tropic the noon's shadow falls north, south of the other one it falls south; on paper north is up.
    [Theory]
    [InlineData("52.3°", true)]
    [InlineData("-52.3°", false)]
    public void Shadows_at_noon_are_drawn_towards_the_pole(string latitude, bool north)
    {
        var drawing = ShadowDrawing.Of(Day($"date: 2026-03-20, latitude: {latitude}, longitude: 0°"))!;

        var noon = drawing.Marks.OfType<Label>().Single(label => label.Text == "12");
        (noon.At.Y < 0).Should().Be(north);
        var (morning, evening) = (drawing.Marks.OfType<Label>().Single(label => label.Text == "9"), drawing.Marks.OfType<Label>().Single(label => label.Text == "15"));
        morning.At.X.Should().BeLessThan(0, "in the morning shade falls to the west");
        evening.At.X.Should().BeGreaterThan(0);
    }

    // On the equinox the sun of 45° stands at 45° at noon: the shadow is as long as the stick, and reaches the circle of one metre.
    [Fact]
    public void Shadows_are_drawn_to_the_scale_of_their_circles()
    {
        var drawing = ShadowDrawing.Of(Day("date: 2026-03-20, latitude: 45°, longitude: 0°"))!;

        var noon = drawing.Marks.OfType<Line>().Select(line => line.To.DistanceTo(default)).Min();
        noon.Should().BeApproximately(drawing.Marks.OfType<Circle>().Select(circle => circle.Radius).Where(radius => radius > 1).Min(), 0.6);
    }

    [Fact]
    public void A_low_winter_sun_throws_no_shadow_worth_a_drawing() => ShadowDrawing.Of(Day("date: 2026-12-21, latitude: 65°, longitude: 0°")).Should().BeNull();

    [Fact]
    public void A_plan_without_a_date_prints_no_day() => SheetSet.Groups(KitPlanner.Plan(Read("ambient: EV 12")), new SheetOptions()).Select(group => group.Name).Should().NotContain("day-plan.pdf");

    [Fact]
    public void A_plan_with_a_date_prints_its_day() =>
        SheetSet.Groups(KitPlanner.Plan(Read("date: 2026-06-14, latitude: 52.3°, longitude: 5.1°")), new SheetOptions()).Select(group => group.Name).Should().Contain("day-plan.pdf");

    private static DayPlan Day(string site) => PlanStages.Day(Read(site).Kit!, null)!;

    private static KitReadResult Read(string site) => KitReader.Parse(Text.Replace("SITE", site, StringComparison.Ordinal), "kit.yaml", PartsLibrary.Embedded);
}
