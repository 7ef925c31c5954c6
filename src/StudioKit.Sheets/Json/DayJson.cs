using System.Globalization;
using StudioKit.Kits;
using StudioKit.Physics.Daylight;
using StudioKit.Planning;
using StudioKit.Planning.Session;

namespace StudioKit.Sheets.Json;

/// <summary>The day and the hours of blocks as JSON; minutes count from midnight of the date.</summary>
internal static class DayJson
{
    public static void Write(JsonReport json, DayPlan day) => json
        .Text("date", day.Date.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture))
        .Number("latitudeDeg", day.Place.Latitude.Degrees)
        .Number("longitudeDeg", day.Place.Longitude.Degrees)
        .Number("utcOffsetS", day.ClockOffset.Seconds)
        .Flag("utcOffsetGiven", day.IsOffsetGiven)
        .Stops("shadeLoss", day.ShadeLoss)
        .List("events", day.Events, of => json.Text("kind", MemberText.Of(of.Kind)).Count("minute", of.Minute).Number("heightDeg", of.Height.Degrees))
        .List("hours", day.Hours, hour => WriteHour(json, hour));

    public static void Write(JsonReport json, BlockHours hours) => json
        .List("times", hours.Times, time => WriteTime(json, time))
        .Count("earliestBeginMinute", hours.EarliestBegin)
        .Count("latestBeginMinute", hours.LatestBegin)
        .Text("sky", Name(hours.Chosen?.Sky))
        .Number("roomS", hours.Room.Seconds)
        .Count("roundsThatFit", hours.RoundsThatFit);

    private static void WriteTime(JsonReport json, LightTime time) => json.Text("sky", Name(time.Sky)).Count("fromMinute", time.From).Count("toMinute", time.To);

    private static void WriteHour(JsonReport json, DayHour hour) => json
        .Count("minute", hour.Minute)
        .Number("heightDeg", hour.Height.Degrees)
        .Number("azimuthDeg", hour.Azimuth.Degrees)
        .Number("shadowOverHeight", hour.ShadowOverHeight)
        .Number("shadowDirectionDeg", hour.ShadowDirection.Degrees)
        .List("lights", hour.Lights.Select((light, sky) => (light, sky)), pair => json
            .Text("sky", Name((SkyState)pair.sky))
            .Number("ev100", pair.light.Typical.AtIso100)
            .Number("darkestEv100", pair.light.Darkest.AtIso100)
            .Number("brightestEv100", pair.light.Brightest.AtIso100))
        .List("setUps", hour.SetUps, fitting => json.Text("setUp", fitting.SetUp).Texts("skies", fitting.Skies.Select(sky => MemberText.Of(sky))));

    private static string? Name(SkyState? sky) => sky is { } of ? MemberText.Of(of) : null;
}
