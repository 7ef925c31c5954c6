using System.Globalization;
using StudioKit.Field.Calibration;
using StudioKit.Field.Calibration.Drift;
using StudioKit.Kits;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>How a kit drifts from outing to outing, and what to read next time, as text and as JSON.</summary>
internal static class HistoryReport
{
    public static string Lines(CalibrationHistory history, IReadOnlyList<(string Flash, IReadOnlyList<CandidateReading> Candidates)> next)
    {
        List<(string, string)> lines =
        [
            ("verdict", Verdict(history)),
            .. next.Where(cards => cards.Candidates.Count > 0).Select(cards => ("read next time", Best(cards.Flash, cards.Candidates[0]))),
            ("drift", "from the first outing to the last, more light or a higher clip point being positive"),
            .. history.Drifts.Select(drift => ("  " + Name(drift), Drift(drift))),
            ("outings", Text($"{history.Outings.Count}")),
            .. history.Outings.Select(outing => (Text($"  {outing.Day:yyyy-MM-dd}"), Text($"{outing.Used} of {outing.All} readings used"))),
        ];
        return TextLines.Of(lines, [.. history.LeftOut.Select(fault => $"Left out: {fault.Subject}: {fault.Message}"), .. next.SelectMany(cards => Others(cards.Flash, cards.Candidates))]);
    }

    public static string Json(CalibrationHistory history, IReadOnlyList<(string Flash, IReadOnlyList<CandidateReading> Candidates)> next) => JsonReport.Document(json => json
        .List("outings", history.Outings, outing => json.Text("date", Text($"{outing.Day:yyyy-MM-dd}")).Count("readings", outing.All).Count("readingsUsed", outing.Used))
        .List("drifts", history.Drifts, drift => json
            .Text("kind", MemberText.Of(drift.Kind)).Text("flash", drift.Flash).Number("driftStops", drift.Stops).Number("intervalStops", drift.PlusMinus)
            .Number("stopsPerYear", drift.PerYear?.Slope).Number("confidence", QuantityDrift.Confidence).Flag("significant", drift.IsSignificant)
            .List("outings", drift.Outings, outing => json
                .Text("date", Text($"{outing.Day:yyyy-MM-dd}")).Number("stops", outing.Stops).Number("uncertaintyStops", outing.UncertaintyStops)))
        .List("nextReadings", next.SelectMany(cards => cards.Candidates.Select(candidate => (cards.Flash, Candidate: candidate))), entry => json
            .Text("cardsOf", entry.Flash).Text("kind", MemberText.Of(entry.Candidate.Kind)).Text("flash", entry.Candidate.Flash)
            .Number("marginUncertaintyStops", entry.Candidate.Before).Number("marginUncertaintyAfterStops", entry.Candidate.After))
        .Texts("leftOut", history.LeftOut.Select(fault => fault.ToString())));

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
            $"{Rounded.WithSign(stops, 2)} ± {interval:0.00} stop over {drift.Outings.Count} outings: {(drift.IsSignificant ? Text($"DRIFTS, {Rounded.WithSign(drift.PerYear!.Slope, 2)} stop a year") : "no significant drift")}"),
        _ => Text($"told apart by {drift.Outings.Count} outing{(drift.Outings.Count == 1 ? "" : "s")} only, of three that a drift takes"),
    };

    private static string Best(string flash, CandidateReading best) => best.After < best.Before * 0.95
        ? Text($"{Kind(best)}: the margin of the cards over {flash} is then known to ± {best.After:0.00} stop, now ± {best.Before:0.00}")
        : Text($"nothing: no single reading makes the margin of the cards over {flash} much surer than ± {best.Before:0.00} stop");

    private static IEnumerable<string> Others(string flash, IReadOnlyList<CandidateReading> candidates) => candidates.Count < 2
        ? []
        : [$"Other readings, for {flash}: {string.Join(", ", candidates.Skip(1).Select(candidate => Text($"{Kind(candidate)} ± {candidate.After:0.00}")))}."];

    private static string Kind(CandidateReading candidate) => $"{MemberText.Of(candidate.Kind)} with {candidate.Flash}";

    private static string Name(QuantityDrift drift) => drift.Kind switch
    {
        DriftingKind.FlashLight => CalibratedQuantity.NameOf(CalibrationQuantity.FlashLight, drift.Flash),
        DriftingKind.PanelTransmittance => CalibratedQuantity.NameOf(CalibrationQuantity.PanelTransmittance, ""),
        DriftingKind.CameraClipPoint => CalibratedQuantity.NameOf(CalibrationQuantity.CameraClipPoint, ""),
        _ => $"the white margin over '{drift.Flash}'",
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
