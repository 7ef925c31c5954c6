using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Stations.OneWhite;
using StudioKit.Wording;

namespace StudioKit.Sheets.Json;

/// <summary>Several stations and their one white, as JSON.</summary>
public static class CommonWhiteJson
{
    /// <summary>All of it.</summary>
    /// <param name="json">The document.</param>
    /// <param name="white">The stations.</param>
    public static void Write(JsonReport json, CommonWhite white)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(white);
        json.Stops("commonMargin", white.Margin).Text("basis", MemberText.Of(white.Basis)).Stops("tolerance", white.Tolerance).Flag("oneWhite", white.IsOneWhite)
            .List("stations", white.Stations, station => Write(json, station))
            .Section("spreadBefore", () => Write(json, white.Before));
        if (white.After is { } after)
        {
            json.Section("spreadAfter", () => Write(json, after));
        }

        json.Texts("notes", CommonWhiteText.Notes(white));
    }

    private static void Write(JsonReport json, StationWhite station)
    {
        var exposure = station.Measured.Exposure;
        json.Text("station", station.Name).Text("setUp", exposure.SetUp).Text("framing", exposure.Framing.Name).Number("pitchDeg", station.Measured.Pitch.Degrees)
            .Section("measured", () => json
                .Number("powerFraction", station.MeasuredAt.Power.Fraction).Text("powerInFullStops", station.MeasuredAt.InFullStops).Stops("whiteMargin", station.Measured.Frame.Darkest)
                .Stops("uncertainty", station.Measured.Uncertainty).Stops("lightAgainstPlan", station.Gives).Stops("otherShape", station.Measured.OtherShape))
            .Section("before", () => Write(json, Promise.Of(exposure), station.Before));
        if (station is { Advice: { } advice, After: { } level })
        {
            json.Section("after", () =>
            {
                Write(json, advice.Promise, level);
                json.Text("says", AdviceText.Of(exposure, advice)).Texts("keys", advice.Changes.Select(change => change.Key));
            });
        }

        json.Stops("acceptedTo", station.AcceptedTo).Flag("reaches", station.Reaches).Text("within", MemberText.Of(station.Decision)).Texts("missed", station.Missed.Select(LimitText.Of));
    }

    private static void Write(JsonReport json, Promise set, WhiteLevel level)
    {
        var below = set.Lights.First(light => light.Role.IsBackground());
        json.Text("flash", below.Flash).Number("powerFraction", below.Power.Fraction).Text("powerInFullStops", below.Mark.InFullStops).Number("isoSpeed", set.Iso.Value).Number("fNumber", set.Aperture.Value)
            .Stops("whiteMargin", level.Margin).Stops("uncertainty", level.Uncertainty).Stops("deviation", level.Deviation).Number("probabilityWithin", level.Probability);
    }

    private static void Write(JsonReport json, WhiteSpread spread) => json.Stops("range", spread.Range).Stops("uncertainty", spread.Uncertainty);
}
