using System.Globalization;
using StudioKit.Physics.Daylight;
using StudioKit.Planning;
using StudioKit.Planning.Session;
using UnitsNet;

namespace StudioKit.Wording;

/// <summary>The day at its place in words.</summary>
public static class DayText
{
    private const int Day = 1440;

    private static readonly string[] Compass = ["north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"];

    /// <summary>What a table of the day says of where its light comes from.</summary>
    /// <param name="day">The day.</param>
    public static string Basis(DayPlan day)
    {
        ArgumentNullException.ThrowIfNull(day);
        var shade = day.ShadeLoss.Value > 0
            ? FormattableString.Invariant($", in shade of the sky alone, less the {day.ShadeLoss.Value:0.#} stops that the kit gives for its shade")
            : ", in shade of the whole sky alone (umbrellas and trees make it darker: 'shade-loss' in the kit's site)";
        return $"Mean light of clear days on level ground{shade}; under average clouds a third of it all. Sun and shade are twice or half as bright at times, thin clouds leave a half and dark ones a tenth: the "
            + "figures between brackets. A meter on the spot goes before all of this; the cards' tables say what to set.";
    }

    /// <summary>Date, place and clock, e.g. <c>14 June 2026 at 52.3° N, 5.1° E, clock at UTC+2</c>.</summary>
    /// <param name="day">The day.</param>
    public static string Title(DayPlan day)
    {
        ArgumentNullException.ThrowIfNull(day);
        return string.Create(CultureInfo.InvariantCulture, $"{day.Date:d MMMM yyyy} at {Place(day.Place)}, clock at {Clock(day)}");
    }

    /// <summary>Twilights, sunrise, noon and sunset in a sentence.</summary>
    /// <param name="day">The day.</param>
    public static string Events(DayPlan day)
    {
        ArgumentNullException.ThrowIfNull(day);
        var noon = day.Events.First(of => of.Kind == SunEventKind.TrueNoon);
        var polar = day.Events.Any(of => of.Kind is SunEventKind.Sunrise or SunEventKind.Sunset) ? ""
            : noon.Height > Angle.Zero ? " The sun does not set." : " The sun does not rise.";
        return $"{Sentence.Begin(string.Join(", ", day.Events.Select(Event)))}.{polar}";
    }

    /// <summary>A time of the clock, e.g. <c>06:40</c>; the day after the date is named.</summary>
    /// <param name="minute">Minutes from midnight of the date [1].</param>
    public static string Time(int minute) => FormattableString.Invariant($"{minute % Day / 60:00}:{minute % 60:00}{(minute >= Day ? " (next day)" : "")}");

    /// <summary>A direction by compass, e.g. <c>195°, south</c>.</summary>
    /// <param name="azimuth">From north through east.</param>
    public static string Direction(Angle azimuth) => FormattableString.Invariant($"{Degrees(azimuth):0}°, {Compass[(int)Math.Round(azimuth.Degrees / 45) % 8]}");

    /// <summary>Light and how far off it may be, e.g. <c>14.3 (13.3 to 14.7)</c>, as exposure values.</summary>
    /// <param name="light">The light.</param>
    public static string Light(ExpectedDaylight light) =>
        $"{AmbientText.Figure(light.Typical)} ({AmbientText.Figure(light.Darkest)} to {AmbientText.Figure(light.Brightest)})";

    /// <summary>How many times as long a shadow is as what throws it is high; nothing without a sun.</summary>
    /// <param name="hour">The time.</param>
    public static string Shadow(DayHour hour)
    {
        ArgumentNullException.ThrowIfNull(hour);
        return hour.ShadowOverHeight is { } length ? length > 20 ? "over 20" : FormattableString.Invariant($"{length:0.0}") : "";
    }

    /// <summary>Set-ups that can be photographed at a time, each with its skies.</summary>
    /// <param name="hour">The time.</param>
    public static string SetUps(DayHour hour)
    {
        ArgumentNullException.ThrowIfNull(hour);
        return string.Join("; ", hour.SetUps.Select(setUp => $"{setUp.SetUp} ({string.Join(", ", setUp.Skies.Select(Sky))})"));
    }

    /// <summary>When a block can be begun, and when its light is there; nothing where neither sun nor its subjects' hours are known.</summary>
    /// <param name="block">The block.</param>
    public static string Begin(SessionBlock block)
    {
        ArgumentNullException.ThrowIfNull(block);
        return block.Hours is not { } hours ? ""
            : hours is { EarliestBegin: { } earliest, LatestBegin: { } latest, Chosen: { } chosen }
                ? $"Begin {(latest <= earliest ? $"at {Time(earliest)}" : $"between {Time(earliest)} and {Time(latest)}")}{(chosen.Sky is { } sky ? $", {Under(sky)}" : "")}. It can be photographed: {Times(hours.Times)}."
            : hours.Times.Count == 0 ? "At no time of this day can it be photographed."
            : $"Its rounds do not fit. It can be photographed: {Times(hours.Times)}.";
    }

    /// <summary>Times of a day, each sky with its own.</summary>
    internal static string Times(IEnumerable<LightTime> times) => string.Join("; ", times.GroupBy(time => time.Sky)
        .Select(sky => $"{(sky.Key is { } of ? $"{Under(of)} " : "")}{string.Join(" and ", sky.Select(time => $"{Time(time.From)} to {Time(time.To)}"))}"));

    /// <summary>What a sky is called.</summary>
    internal static string Sky(SkyState sky) => sky switch
    {
        SkyState.Sun => "sun",
        SkyState.Cloud => "cloud",
        SkyState.Shade => "shade",
        _ => throw new ArgumentOutOfRangeException(nameof(sky), sky, "A sky without a word."),
    };

    private static string Under(SkyState sky) => sky switch
    {
        SkyState.Sun => "in sun",
        SkyState.Cloud => "under cloud",
        _ => "in shade",
    };

    private static string Event(SunEvent of) => of.Kind switch
    {
        SunEventKind.Daybreak => $"first light {Time(of.Minute)}",
        SunEventKind.Sunrise => $"sunrise {Time(of.Minute)}",
        SunEventKind.TrueNoon => FormattableString.Invariant($"highest sun {Time(of.Minute)} at {of.Height.Degrees:0}°"),
        SunEventKind.Sunset => $"sunset {Time(of.Minute)}",
        SunEventKind.Nightfall => $"night from {Time(of.Minute)}",
        _ => throw new ArgumentOutOfRangeException(nameof(of), of.Kind, "An event without words."),
    };

    private static string Place(GeographicPlace place) => FormattableString.Invariant(
        $"{Math.Abs(place.Latitude.Degrees):0.##}° {(place.Latitude.Degrees < 0 ? "S" : "N")}, {Math.Abs(place.Longitude.Degrees):0.##}° {(place.Longitude.Degrees < 0 ? "W" : "E")}");

    private static string Clock(DayPlan day)
    {
        var minutes = (int)Math.Round(day.ClockOffset.Minutes);
        var (hours, rest) = (Math.Abs(minutes) / 60, Math.Abs(minutes) % 60);
        var offset = FormattableString.Invariant($"UTC{(minutes < 0 ? "−" : "+")}{hours}{(rest == 0 ? "" : $":{rest:00}")}");
        return day.IsOffsetGiven ? offset : $"{offset} by its longitude, summer time left out";
    }

    private static double Degrees(Angle azimuth) => Math.Round(azimuth.Degrees) % 360;
}
