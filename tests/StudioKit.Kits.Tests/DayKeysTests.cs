using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Tests;

/// <summary>Date and place of a day, and when subjects are about.</summary>
public sealed class DayKeysTests
{
    private const string Text = """
        kit: Moths
        camera: {name: body, sensor: 36 mm x 24 mm}
        lenses: [{name: reed, focal-length: 55 mm}]

        """;

    [Theory]
    [InlineData("52.3°", "5.1°", 52.3, 5.1)]
    [InlineData("52.3° N", "5.1° E", 52.3, 5.1)]
    [InlineData("33.9° S", "105.2° W", -33.9, -105.2)]
    [InlineData("-33.9°", "-105.2 deg", -33.9, -105.2)]
    [InlineData("90°n", "180°w", 90, -180)]
    public void Places_are_read_with_a_sign_or_a_letter(string latitude, string longitude, double north, double east)
    {
        var site = Read($"site: {{latitude: {latitude}, longitude: {longitude}}}\n").Kit!.Site;

        site.Latitude!.Value.Degrees.Should().BeApproximately(north, 1e-9);
        site.Longitude!.Value.Degrees.Should().BeApproximately(east, 1e-9);
    }

    [Theory]
    [InlineData("2026-06-14", 2026, 6, 14)]
    [InlineData("2024-02-29", 2024, 2, 29)]
    [InlineData("2100-12-31", 2100, 12, 31)]
    public void Dates_are_read(string date, int year, int month, int day) =>
        Site($"date: {date}").Date.Should().Be(new DateOnly(year, month, day));

    [Theory]
    [InlineData("+2 h", 2)]
    [InlineData("2 h", 2)]
    [InlineData("-9 h 30 min", -9.5)]
    [InlineData("5 h 45 min", 5.75)]
    public void Clocks_are_ahead_of_or_behind_Universal_Time(string offset, double hours) =>
        Site($"date: 2026-06-14, utc-offset: {offset}").ClockOffset.Hours.Should().BeApproximately(hours, 1e-9);

    // 15° make an hour.
    [Theory]
    [InlineData("0°", 0)]
    [InlineData("5.1° E", 0)]
    [InlineData("7.5° E", 1)]
    [InlineData("105.2° W", -7)]
    [InlineData("180° E", 12)]
    public void Without_an_offset_the_clock_goes_by_the_longitude_and_that_is_told(string longitude, int hours)
    {
        var read = Read($"site: {{date: 2026-06-14, latitude: 10°, longitude: {longitude}}}\n");

        read.Kit!.Site.ClockOffset.Hours.Should().Be(hours);
        read.Defaults.Single(used => used.Path == "site.utc-offset").Value.Should().Be($"{(hours < 0 ? "" : "+")}{hours} h");
    }

    [Theory]
    [InlineData("")]
    [InlineData("site: {latitude: 52°, longitude: 5°}\n")]
    public void Where_no_day_is_planned_no_clock_is_taken_for_usual(string site) =>
        Read(site).Defaults.Should().NotContain(used => used.Path == "site.utc-offset" || used.Path == "site.shade-loss");

    [Theory]
    [InlineData("21:30 to 02:00", null)]
    [InlineData("day", DayPart.Day)]
    [InlineData("night", DayPart.Night)]
    [InlineData("dawn", DayPart.Dawn)]
    [InlineData("dusk", DayPart.Dusk)]
    public void Subjects_are_about_by_the_clock_or_by_the_sun(string active, DayPart? part)
    {
        var about = Read($"subjects: [{{name: moth, group: flying-insects, length: 20 mm, active: {active}}}]\n").Kit!.Subjects[0].Active!;

        about.Part.Should().Be(part);
        (about.Hours is null).Should().Be(part is not null);
    }

    [Theory]
    [InlineData("date: 14.6.2026", DiagnosticCodes.UnreadableValue, "2026-06-14")]
    [InlineData("date: 2026-13-01", DiagnosticCodes.UnreadableValue, "2026-06-14")]
    [InlineData("date: 2026-02-29", DiagnosticCodes.UnreadableValue, "2026-06-14")]
    [InlineData("date: 1900-12-31", DiagnosticCodes.OutOfRange, "1901-01-01 to 2100-12-31")]
    [InlineData("date: 2101-01-01", DiagnosticCodes.OutOfRange, "1901-01-01 to 2100-12-31")]
    [InlineData("latitude: 91°", DiagnosticCodes.OutOfRange, "-90° to 90°")]
    [InlineData("latitude: 52.3", DiagnosticCodes.UnreadableValue, "52.3°")]
    [InlineData("latitude: -52.3° S", DiagnosticCodes.UnreadableValue, "52.3° N")]
    [InlineData("longitude: 181°", DiagnosticCodes.OutOfRange, "-180° to 180°")]
    [InlineData("longitude: 5.1° N", DiagnosticCodes.UnreadableValue, "°")]
    [InlineData("utc-offset: 2", DiagnosticCodes.UnreadableValue, "2")]
    [InlineData("utc-offset: +15 h", DiagnosticCodes.OutOfRange, "-12 h to +14 h")]
    [InlineData("shade-loss: -1 stop", DiagnosticCodes.OutOfRange, "0 to 8")]
    public void What_is_no_day_or_place_is_answered_with_what_works(string line, string code, string hint)
    {
        var fault = Read($"site:\n  {line}\n").Diagnostics.First(found => found.Severity == DiagnosticSeverity.Error);

        fault.Code.Should().Be(code);
        (fault.Line, fault.Column).Should().Be((5, 3 + line.IndexOf(':', StringComparison.Ordinal) + 2));
        fault.Hint.Should().Contain(hint);
    }

    [Theory]
    [InlineData("latitude: 52°", "longitude")]
    [InlineData("longitude: 5°", "latitude")]
    [InlineData("date: 2026-06-14", "latitude")]
    public void Half_a_place_is_refused(string line, string missing)
    {
        var fault = Read($"site:\n  {line}\n").Diagnostics.Should().ContainSingle().Which;

        fault.Code.Should().Be(DiagnosticCodes.Contradiction);
        fault.Hint.Should().Contain(missing);
    }

    [Theory]
    [InlineData("noon", "day, night, dawn, dusk")]
    [InlineData("21:30", "09:00 to 17:00")]
    [InlineData("evening", "21:30 to 02:00")]
    public void What_is_no_part_of_the_day_is_answered_with_what_works(string active, string hint) =>
        Read($"subjects: [{{name: moth, group: flying-insects, length: 20 mm, active: {active}}}]\n").Diagnostics.Should().ContainSingle().Which.Hint.Should().Contain(hint);

    [Theory]
    [InlineData("away", 0)]
    [InlineData("right", 90)]
    [InlineData("towards", 180)]
    [InlineData("left", 270)]
    [InlineData("30°", 30)]
    [InlineData("-90°", -90)]
    public void Ground_falls_by_a_word_or_an_angle(string written, double degrees) => Read($"site: {{downhill: {written}}}\n").Kit!.Site.Downhill!.Value.Degrees.Should().BeApproximately(degrees, 1e-9);

    [Theory]
    [InlineData("north", "away, right, towards, left")]
    [InlineData("30", "30°")]
    [InlineData("400°", "-180° to 360°")]
    public void What_is_no_way_downhill_is_answered_with_what_works(string written, string hint) =>
        Read($"site: {{downhill: {written}}}\n").Diagnostics.Should().ContainSingle().Which.Hint.Should().Contain(hint);

    // Clocks of the world, in summer: Reykjavik, Madrid, Kashgar by Peking time, Kiritimati beyond the date line, Denver.
    [Theory]
    [InlineData("21.9° W", "+0 h")]
    [InlineData("3.7° W", "+2 h")]
    [InlineData("76° E", "+8 h")]
    [InlineData("157.4° W", "+14 h")]
    [InlineData("105° W", "-6 h")]
    public void Clocks_that_are_in_use_are_believed(string longitude, string offset) =>
        Read($"site: {{latitude: 40°, longitude: {longitude}, utc-offset: {offset}}}\n").Diagnostics.Should().BeEmpty();

    // Denver with its west forgotten: seven hours east of Greenwich, thirteen hours ahead of its clock, or eleven behind.
    [Theory]
    [InlineData("105° E", "-6 h", "11 hours ahead of")]
    [InlineData("105° W", "+2 h", "9 hours ahead of")]
    [InlineData("5° E", "-4 h", "4.3 hours behind")]
    public void A_clock_far_off_the_sun_is_asked_about(string longitude, string offset, string told)
    {
        var fault = Read($"site: {{latitude: 40°, longitude: {longitude}, utc-offset: {offset}}}\n").Diagnostics.Should().ContainSingle().Which;

        (fault.Code, fault.Severity).Should().Be((DiagnosticCodes.Unusual, DiagnosticSeverity.Warning));
        fault.Message.Should().Contain(told);
    }

    // What is written of a value reads as the same value.
    [Fact]
    public void Dates_places_and_hours_written_are_read_again()
    {
        var days = Gen.Int[693_961, 767_009];
        Gen.Select(days, Gen.Double[-90, 90], Gen.Double[-12, 14], Gen.Int[0, 1439], Gen.Int[0, 1439]).Where(of => of.Item4 != of.Item5).Sample((day, degrees, hours, from, to) =>
        {
            DayText.Date.Read(DayText.Date.Write(day)).Value.Should().Be(day);
            DayText.Latitude.Read(DayText.Latitude.Write(degrees)).Value.Should().BeApproximately(degrees, 1e-3);
            DayText.Longitude.Read(DayText.Longitude.Write(2 * degrees)).Value.Should().BeApproximately(2 * degrees, 1e-3);
            DayText.ClockOffset.Read(DayText.ClockOffset.Write(Math.Round(hours * 60) * 60)).Value.Should().BeApproximately(Math.Round(hours * 60) * 60, 0.01);
            DayText.Active.Read(DayText.Active.Write(new(new ClockRange(from, to), null))).Value.Should().Be(new ActiveTime(new ClockRange(from, to), null));
        });
    }

    private static Session.SiteSpec Site(string keys) => Read($"site: {{latitude: 52.3°, longitude: 5.1°, {keys}}}\n").Kit!.Site;

    private static KitReadResult Read(string lines) => KitReader.Parse(Text + lines, "kit.yaml", PartsLibrary.Embedded);
}
