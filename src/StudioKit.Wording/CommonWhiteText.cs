using System.Globalization;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Stations.OneWhite;

namespace StudioKit.Wording;

/// <summary>Several stations and their one white, in words.</summary>
public static class CommonWhiteText
{
    // A map that lies so far otherwise than planned is no flash that stands a little beside its place (common practice, no source).
    private const double OtherView = 0.3;

    /// <summary>What all are to come to.</summary>
    public static string Title(CommonWhite white)
    {
        ArgumentNullException.ThrowIfNull(white);
        var basis = white.Basis switch
        {
            CommonMargin.AskedFor => "as asked for",
            CommonMargin.Goal => "what the kits aim for",
            _ => "the most that all come to",
        };
        return Text($"One white: {Rounded.Stops(white.Margin.Value, 2)} over clipping at the darkest place, {basis}, ± {white.Tolerance.Value:0.00}");
    }

    /// <summary>What was measured, e.g. <c>-0.4 at 1/16, ± 0.06</c>.</summary>
    public static string Measured(StationWhite station)
    {
        ArgumentNullException.ThrowIfNull(station);
        return Text($"{Rounded.WithSign(station.Measured.Frame.Darkest!.Value.Value, 2)} at {station.MeasuredAt.AsOneFraction}, ± {station.Measured.Uncertainty.Value:0.00}");
    }

    /// <summary>Power, ISO speed and f-number of an exposure.</summary>
    public static string Set(Promise set)
    {
        ArgumentNullException.ThrowIfNull(set);
        return $"{set.Lights.First(light => light.Role.IsBackground()).Mark.AsOneFraction}, {set.Iso.Nominal}, {set.Aperture.Nominal}";
    }

    /// <summary>A margin and how well it is known.</summary>
    public static string Level(WhiteLevel? level) => level is null ? "none" : Text($"{Rounded.WithSign(level.Margin.Value, 2)} ± {level.Uncertainty.Value:0.00}");

    /// <summary>Whether a station is within.</summary>
    public static string Decision(ConformityDecision decision) => decision switch
    {
        ConformityDecision.Within => "yes",
        ConformityDecision.Outside => "NO",
        _ => "not decided",
    };

    /// <summary>What to turn at each station, and what its table leaves unsaid.</summary>
    public static IEnumerable<string> Notes(CommonWhite white)
    {
        ArgumentNullException.ThrowIfNull(white);
        foreach (var station in white.Stations)
        {
            yield return $"{station.Name}: {Turn(station)}.";
            foreach (var limit in station.Missed.Take(1))
            {
                yield return $"{station.Name}: {(station.Advice is null ? "it cannot be made white" : "it does not come to the common margin")}. {LimitText.Of(limit)}";
            }

            foreach (var doubt in Doubts(station))
            {
                yield return $"{station.Name}: {doubt}";
            }
        }

        yield return Spread(white);
        yield return Text($"Within: at least {Rounded.Percent(Conformity.Proven)} likely to lie inside the tolerance; no: as likely outside; else the measurement decides neither (ISO 14253-1, JCGM 106). ± is one standard deviation.");
    }

    private static string Turn(StationWhite station) =>
        station.Advice is not { } advice ? "nothing that the kit has makes it white all over within the veil limit"
        : AdviceText.Of(station.Measured.Exposure, advice) is { Length: > 0 } turn ? turn
        : "leave all as the card has it";

    private static IEnumerable<string> Doubts(StationWhite station)
    {
        if (station is { Decision: ConformityDecision.NotDecided, AcceptedTo: var accepted })
        {
            yield return accepted is { } to
                ? Text($"not decided, since it is known to ± {station.After!.Uncertainty.Value:0.00}: up to {to.Value:0.00} off it would count as within. A ladder with more frames near clipping tells it better.")
                : Text($"not decided, since ± {station.After!.Uncertainty.Value:0.00} is too much for the tolerance. A wider tolerance or a ladder with more frames near clipping would decide it.");
        }

        if (station.Measured.OtherShape.Value > OtherView)
        {
            yield return Text($"the light lies otherwise over the frame than planned ({Rounded.Stops(station.Measured.OtherShape.Value, 1)} about the mean): is it another framing or pitch, or does the flash stand elsewhere?");
        }
    }

    private static string Spread(CommonWhite white)
    {
        var before = Text($"As the cards are set the stations lie {Of(white.Before)} apart");
        return white.After is { } after
            ? Text($"{before}, then {Of(after)}{(white.Stations.Any(station => station.After is null) ? ", without those that cannot be made white" : "")}.")
            : before + ".";
    }

    private static string Of(WhiteSpread spread) => Text($"{spread.Range.Value:0.00} ± {Rounded.Stops(spread.Uncertainty.Value, 2)}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
