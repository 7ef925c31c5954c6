using System.Globalization;
using StudioKit.Field.Calibration;
using StudioKit.Kits;
using StudioKit.Sheets.Json;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>What a calibration found, as text and as JSON.</summary>
internal static class CalibrationReport
{
    public static string Lines(KitSpec kit, KitCorrection correction, CalibrationResult result, IReadOnlyList<CardPowerChange> cards)
    {
        List<(string, string)> lines =
        [
            .. correction.Values(kit).Select(value => (value.Quantity, CorrectionText.Value(value))),
            ("cards", Summary(cards)),
            .. Changed(cards).Select(card => ($"  {card.SetUp}, {card.Framing}", Change(card))),
            ("readings", Agreement(result.Fit)),
            .. result.Residuals.Select(residual => ("  " + residual.Reading.Name, Residual(residual))),
        ];
        return TextLines.Of(lines, result.Caveats);
    }

    public static string Json(string target, KitSpec kit, KitCorrection correction, CalibrationResult result, IReadOnlyList<CardPowerChange> cards) => JsonReport.Document(json => json
        .Text("file", target)
        .List("corrections", correction.Values(kit), value => json
            .Text("quantity", value.Quantity).Text("unit", value.Unit).Number("before", value.Before).Number("after", value.After)
            .Stops("correction", value.Correction).Stops("uncertainty", value.PlusMinus))
        .Number("chiSquare", result.Fit.ChiSquare).Count("readingsUsed", result.Fit.Readings).Number("chanceOfWorse", result.Fit.Probability)
        .List("readings", result.Residuals, residual => json
            .Text("name", residual.Reading.Name).Number("plannedStops", residual.Reading.Planned).Number("measuredStops", residual.Reading.Measured)
            .Number("beforeStops", residual.Before).Number("afterStops", residual.After)
            .Number("weight", residual.Weight).Flag("disagrees", residual.Disagrees).Flag("impossible", residual.IsImpossible))
        .List("cards", cards, card => json
            .Text("setUp", card.SetUp).Text("framing", card.Framing).Text("flash", card.Before.Flash).Flag("changed", card.IsChanged)
            .Number("powerBefore", card.Before.Power.Fraction).Number("powerAfter", card.After.Power.Fraction)
            .Number("isoBefore", card.IsoBefore.Value).Number("isoAfter", card.IsoAfter.Value))
        .Texts("caveats", result.Caveats));

    private static IEnumerable<CardPowerChange> Changed(IReadOnlyList<CardPowerChange> cards) => cards.Where(card => card.IsChanged);

    private static string Summary(IReadOnlyList<CardPowerChange> cards) => (Changed(cards).Count(), cards.Count) switch
    {
        (0, _) => "nothing on them changes",
        var (changed, all) => Text($"{changed} of {all} powers change"),
    };

    private static string Change(CardPowerChange card)
    {
        var power = Text($"{card.Before.Flash} {card.Before.PowerMark} -> {card.After.PowerMark}");
        return card.IsoBefore == card.IsoAfter ? power : $"{power}, {card.IsoBefore.Nominal} -> {card.IsoAfter.Nominal}";
    }

    private static string Agreement(CalibrationFit fit) => Text($"{fit.Readings} used, chi-square {fit.ChiSquare:0.0}");

    private static string Residual(CalibrationResidual residual) => residual.IsImpossible
        ? Text($"LEFT OUT: {residual.Before:+0.0;-0.0} stops off, more than the kit's figures can be wrong by")
        : Text($"{Rounded.WithSign(residual.Before, 2)} stop off before, {Rounded.WithSign(residual.After, 2)} after{(residual.Disagrees ? ": DISAGREES with the others" : "")}");

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
