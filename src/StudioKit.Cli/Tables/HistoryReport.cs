using System.Globalization;
using Spectre.Console;
using StudioKit.Field.Calibration;
using StudioKit.Field.Calibration.Drift;
using StudioKit.Kits;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>How a kit drifts from outing to outing, and what to read next time, as text and as JSON.</summary>
internal static class HistoryReport
{
    public static void Write(CalibrationHistory history, IReadOnlyList<CardsReadings> next, double reach, CommandHost host)
    {
        host.Output.WriteLine(Lines(history, next));
        var console = TableConsole.For(host);
        foreach (var cards in next)
        {
            var table = TableConsole.Table($"What to read next for the cards over {Name(cards.Cards)}", "reading", "as in", "taken", "then known to", "gain", "bits", Text($"times for ± {reach:0.00}"), "at best");
            foreach (var candidate in cards.Candidates)
            {
                table.AddRow([.. Cells(candidate).Select(Markup.Escape)]);
            }

            console.Write(table);
        }

        TableConsole.Notes(console, [.. history.LeftOut.Select(fault => $"Left out: {fault.Subject}: {fault.Message}"), Explained]);
    }

    public static string Json(CalibrationHistory history, IReadOnlyList<CardsReadings> next, double reach) => JsonReport.Document(json => json
        .List("outings", history.Outings, outing => json.Text("date", Text($"{outing.Day:yyyy-MM-dd}")).Count("readings", outing.All).Count("readingsUsed", outing.Used))
        .List("drifts", history.Drifts, drift => json
            .Text("kind", MemberText.Of(drift.Kind)).Text("flash", drift.Flash).Number("driftStops", drift.Stops).Number("intervalStops", drift.PlusMinus)
            .Number("stopsPerYear", drift.PerYear?.Slope).Number("confidence", QuantityDrift.Confidence).Flag("significant", drift.IsSignificant)
            .Number("betweenOutingsStops", drift.Scatter?.Stops).Number("chanceOfSuchScatter", drift.Scatter?.Chance)
            .List("outings", drift.Outings, outing => json
                .Text("date", Text($"{outing.Day:yyyy-MM-dd}")).Number("stops", outing.Stops).Number("uncertaintyStops", outing.UncertaintyStops)))
        .Number("reachStops", reach)
        .List("nextReadings", next.SelectMany(cards => cards.Candidates.Select(candidate => (cards.Cards, Candidate: candidate))), entry => Candidate(json, entry.Cards, entry.Candidate))
        .Texts("leftOut", history.LeftOut.Select(fault => fault.ToString())));

    private const string Explained =
        "Times: how often it has to be read for that. At best: what is left however often it is read, since an instrument's own error comes again each time and a reading tells only of what it depends on. ± is one standard deviation.";

    private static void Candidate(JsonReport json, LitCards cards, CandidateReading candidate) => json
        .Text("cardsOf", cards.Flash).Text("cardsThrough", cards.Modifier).Text("kind", MemberText.Of(candidate.Kind)).Flag("ladder", candidate.IsLadder).Text("flash", candidate.Flash)
        .Text("through", candidate.Modifier).Text("setUp", candidate.SetUp).Count("taken", candidate.Taken).Number("readingUncertaintyStops", candidate.UncertaintyStops)
        .Number("marginUncertaintyStops", candidate.Before).Number("marginUncertaintyAfterStops", candidate.After).Number("gainStops", candidate.Gain).Number("gainBits", candidate.Bits)
        .Count("timesToReach", candidate.Repeats).Number("leastUncertaintyStops", candidate.Least);

    private static string Lines(CalibrationHistory history, IReadOnlyList<CardsReadings> next) => TextLines.Of(
        [
            ("verdict", Verdict(history)),
            .. next.Where(cards => cards.Candidates.Count > 0).Select(cards => ("read next time", Best(cards.Cards, cards.Candidates[0]))),
            ("drift", "from the first outing to the last, more light or a higher clip point being positive"),
            .. history.Drifts.Select(drift => ("  " + Name(drift), Drift(drift))),
            ("outings", Text($"{history.Outings.Count}")),
            .. history.Outings.Select(outing => (Text($"  {outing.Day:yyyy-MM-dd}"), Text($"{outing.Used} of {outing.All} readings used"))),
        ],
        []);

    private static IEnumerable<string> Cells(CandidateReading candidate) =>
    [
        Kind(candidate), candidate.SetUp, Text($"{candidate.Taken}"), Text($"± {candidate.After:0.00}"), Text($"{candidate.Gain:0.00}"), Text($"{candidate.Bits:0.0}"),
        candidate.Repeats switch { 0 => "now", { } times => Text($"{times}"), _ => "never" }, Text($"± {candidate.Least:0.00}"),
    ];

    private static string Verdict(CalibrationHistory history)
    {
        var drifting = history.Drifts.Where(drift => drift.IsSignificant).Select(Name).ToList();
        return drifting.Count > 0 ? "DRIFTS: " + string.Join(", ", drifting)
            : history.Drifts.Any(drift => drift.PerYear is not null) ? "no significant drift of anything that was read three times or more"
            : "too few outings to tell a drift: three are needed, each of which tells a quantity apart";
    }

    private static string Drift(QuantityDrift drift) => drift switch
    {
        { Stops: { } stops, PlusMinus: { } interval } => Text(
            $"{Rounded.WithSign(stops, 2)} ± {interval:0.00} stop over {drift.Outings.Count} outings: {(drift.IsSignificant ? Text($"DRIFTS, {Rounded.WithSign(drift.PerYear!.Slope, 2)} stop a year") : "no significant drift")}{Scatter(drift)}"),
        _ => Text($"told apart by {drift.Outings.Count} outing{(drift.Outings.Count == 1 ? "" : "s")} only, of three that a drift takes"),
    };

    private static string Scatter(QuantityDrift drift) => drift is { IsSignificant: false, Scatter: { IsSignificant: true } scatter }
        ? Text($"; differs by {scatter.Stops:0.00} stop from outing to outing, more than the readings explain")
        : "";

    private static string Best(LitCards cards, CandidateReading best) => best.After < best.Before * 0.95
        ? Text($"{Kind(best)}: the margin of the cards over {Name(cards)} is then known to ± {best.After:0.00} stop, now ± {best.Before:0.00}")
        : Text($"nothing: no single reading makes the margin of the cards over {Name(cards)} much surer than ± {best.Before:0.00} stop");

    private static string Kind(CandidateReading candidate) =>
        $"{(candidate.IsLadder ? "power ladder" : MemberText.Of(candidate.Kind))} with {candidate.Flash}{(candidate.Modifier.Length > 0 ? $" through {candidate.Modifier}" : "")}";

    private static string Name(LitCards cards) => cards.Modifier.Length > 0 ? $"{cards.Flash} through {cards.Modifier}" : cards.Flash;

    private static string Name(QuantityDrift drift) => drift.Kind switch
    {
        DriftingKind.FlashLight => CalibratedQuantity.NameOf(CalibrationQuantity.FlashLight, drift.Flash),
        DriftingKind.PanelTransmittance => CalibratedQuantity.NameOf(CalibrationQuantity.PanelTransmittance, ""),
        DriftingKind.CameraClipPoint => CalibratedQuantity.NameOf(CalibrationQuantity.CameraClipPoint, ""),
        _ => $"the white margin over '{drift.Flash}'",
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
