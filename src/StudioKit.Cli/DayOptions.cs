using System.CommandLine;
using System.CommandLine.Parsing;
using StudioKit.Cli.Usage;
using StudioKit.Kits;
using StudioKit.Kits.Quantities;
using StudioKit.Kits.Session;
using UnitsNet;

namespace StudioKit.Cli;

/// <summary>Options that say on which day and where a kit is planned, in place of what its site says.</summary>
/// <param name="date">Name of the option that gives the date: a command that prints one has another.</param>
internal sealed class DayOptions(string date = "--date")
{
    private readonly Option<DateOnly> _date = QuantityOption.Optional<DateOnly>(
        date, "Date to plan the day for, e.g. 2026-06-14; left out, the date of the kit's site, and where that has none no day is planned.", QuantityText.TryDate, default);

    private readonly Option<Angle> _latitude = QuantityOption.Optional(
        "--latitude", "Latitude of the place, e.g. 52.3, \"52.3° N\" or -33.9; left out, that of the kit's site.", QuantityOption.Between<Angle>(WithUnit<Angle>(QuantityText.TryLatitude, "°"), angle => angle.Degrees, "-90", "90"), default);

    private readonly Option<Angle> _longitude = QuantityOption.Optional(
        "--longitude", "Longitude of the place, e.g. 5.1, \"5.1° E\" or -105.2; left out, that of the kit's site.", QuantityOption.Between<Angle>(WithUnit<Angle>(QuantityText.TryLongitude, "°"), angle => angle.Degrees, "-180", "180"), default);

    private readonly Option<Duration> _offset = QuantityOption.Optional(
        "--utc-offset", "How far the clocks there are ahead of Universal Time, summer time counted, e.g. +2 or \"-9 h 30 min\"; left out, that of the kit's site, else the whole hours of the longitude.",
        QuantityOption.Between<Duration>(WithUnit<Duration>(QuantityText.TryClockOffset, " h"), offset => offset.Hours, "-12", "+14"), default);

    /// <summary>Adds the options.</summary>
    public void AddTo(Command command)
    {
        command.Options.Add(_date);
        command.Options.Add(_latitude);
        command.Options.Add(_longitude);
        command.Options.Add(_offset);
    }

    /// <summary>A kit on the day and at the place that the options give.</summary>
    /// <param name="parsed">The command line.</param>
    /// <param name="read">The kit.</param>
    /// <param name="host">Told what is missing.</param>
    /// <returns>The kit; none where the day or its place is missing.</returns>
    public KitReadResult Apply(ParseResult parsed, KitReadResult read, CommandHost host)
    {
        if (read.Kit is not { } kit || !IsGiven(parsed))
        {
            return read;
        }

        var site = Changed(parsed, kit.Site);
        var problem = site switch
        {
            { Date: null } => $"--latitude, --longitude and --utc-offset go with a date: give {date}, e.g. {date} 2026-06-14.",
            { Latitude: null } or { Longitude: null } => "a day needs its place: give --latitude and --longitude, e.g. --latitude 52.3 --longitude 5.1, or write them into the kit's site.",
            _ => "",
        };
        if (problem.Length > 0)
        {
            host.Report(UsageCodes.Refused, problem);
        }

        return read with { Kit = problem.Length > 0 ? null : kit with { Site = site }, OtherDay = Written(site) };
    }

    /// <summary>Whether any of them was given.</summary>
    public bool IsGiven(SymbolResult result) => All.Any(option => result.GetResult(option) is { Implicit: false });

    private Option[] All => [_date, _latitude, _longitude, _offset];

    private static string Written(SiteSpec site) =>
        FormattableString.Invariant($"{site.Date:yyyy-MM-dd} {site.Latitude?.Degrees} {site.Longitude?.Degrees} {site.ClockOffset.Seconds}");

    private bool IsGiven(ParseResult parsed) => All.Any(option => parsed.GetResult(option) is { Implicit: false });

    // At another place the kit's clock is another place's too, so that it goes by the longitude unless it is given.
    private SiteSpec Changed(ParseResult parsed, SiteSpec site)
    {
        var elsewhere = Given(parsed, _longitude);
        return site with
        {
            Date = Given(parsed, _date) ?? site.Date,
            Latitude = Given(parsed, _latitude) ?? site.Latitude,
            Longitude = elsewhere ?? site.Longitude,
            UtcOffset = Given(parsed, _offset) ?? (elsewhere is null ? site.UtcOffset : null),
        };
    }

    private static T? Given<T>(ParseResult parsed, Option<T> option)
        where T : struct => parsed.GetResult(option) is { Implicit: false } result ? result.GetValue(option) : null;

    // On a command line a bare number of degrees or hours can mean nothing else.
    private static TryRead<T> WithUnit<T>(TryRead<T> read, string unit) => (string text, out T value, out string problem) =>
        read(text.Length > 0 && char.IsAsciiDigit(text[^1]) ? text + unit : text, out value, out problem);
}
