using System.CommandLine;
using StudioKit.Cli.Tables;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using StudioKit.Physics.Sources;
using StudioKit.Planning;
using StudioKit.Sheets.Json;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit exposure</c>: how far a flash under a panel burns it out, without a kit file.</summary>
internal static class ExposureCommand
{
    private const string Text =
        """
        White margin of a panel lit from below: the stops by which it lies above sensor clipping, and the account that leads there.

        Numbers are taken as typed: f/11 is 11, not the 11.31 behind a lens's mark, and 1/5 is 0.2.

        Example: studiokit exposure --guide-number "30 m" --power 1/5 --distance "45 cm" --transmittance 0.5 --aperture f/16 --magnification 1 --iso 500
        """;

    public static Command Create(CommandHost host)
    {
        var guideNumber = QuantityOption.Required<GuideNumber>(
            "--guide-number", "Guide number at full power and ISO 100, e.g. \"30 m\".", QuantityOption.Between<GuideNumber>(QuantityText.TryGuideNumber, value => value.AtIso100.Meters, "1 m", "300 m"));
        var power = QuantityOption.Required<FlashPower>("--power", "Power of the flash, e.g. 1/5 or \"1/8 +1/3\".", QuantityOption.Between<FlashPower>(QuantityText.TryTypedPower, value => value.Fraction, "1/4096", "1/1"));
        var distance = QuantityOption.Required<Length>("--distance", "Flash to panel, e.g. \"45 cm\".", QuantityOption.Between<Length>(QuantityText.TryLength, value => value.Meters, "1 cm", "100 m"));
        var transmittance = QuantityOption.Required<double>("--transmittance", "Share of the light the panel lets through, e.g. 0.5 or \"50 %\".", QuantityOption.Between<double>(QuantityText.TryRatio, value => value, "0.001", "1"));
        var aperture = QuantityOption.Required<FNumber>("--aperture", "f-number set on the lens, e.g. f/16.", QuantityOption.Between<FNumber>(QuantityText.TryTypedFNumber, value => value.Value, "f/0.5", "f/256"));
        var magnification = QuantityOption.Required<Magnification>("--magnification", "Magnification, e.g. 1 or 1:2.", QuantityOption.Between<Magnification>(QuantityText.TryMagnification, value => value.Value, "0.001", "20"));
        var iso = QuantityOption.Required<IsoSpeed>("--iso", "ISO speed, e.g. 500.", QuantityOption.Between<IsoSpeed>(QuantityText.TryIso, value => value.Value, "3", "10000000"));
        var pupilRatio = QuantityOption.Optional<double>("--pupil-ratio", "Exit over entrance pupil diameter, e.g. 1.4; leave it at 1 where unknown.", QuantityOption.Between<double>(QuantityText.TryFactor, value => value, "0.1", "10"), 1);
        var outdoors = QuantityOption.Optional(
            "--outdoor-correction", "Stops that a guide number loses outdoors, e.g. -0.7; 0 gives the bare formula.", QuantityOption.Between<Stops>(QuantityText.TryStops, value => value.Value, "-3", "1"), new Stops(-0.5));
        var target = QuantityOption.Optional("--target", "Margin over clipping to aim for, e.g. 1/2.", QuantityOption.Between<Stops>(QuantityText.TryStops, value => value.Value, "0", "4"), new Stops(1.0 / 3));
        var json = JsonOption.Create();
        var command = new Command("exposure", Text)
        {
            guideNumber, power, distance, transmittance, aperture, magnification, iso, pupilRatio, outdoors, target, json,
        };
        command.SetAction(parsed =>
        {
            var budget = WhiteMarginReport.Of(
                parsed.GetRequiredValue(guideNumber), parsed.GetRequiredValue(power), parsed.GetRequiredValue(distance),
                parsed.GetRequiredValue(transmittance), parsed.GetRequiredValue(aperture), parsed.GetRequiredValue(magnification),
                parsed.GetRequiredValue(pupilRatio), parsed.GetRequiredValue(iso), parsed.GetRequiredValue(outdoors));
            var wanted = parsed.GetRequiredValue(target);
            var verdict = WhitenessVerdict.Of(budget.Total, wanted, budget.Uncertainty);
            host.Output.WriteLine(parsed.GetValue(json) ? Json(budget, wanted, verdict) : Lines(budget, wanted, verdict));
            return (int)ExitCode.Done;
        });
        return command;
    }

    private static string Json(LightBudget budget, Stops target, WhitenessVerdict verdict) => JsonReport.Document(json =>
    {
        json.Number("whiteMarginStops", budget.Total.Value).Number("uncertaintyStops", budget.Uncertainty.Value)
            .Stops("target", target).Text("whiteness", MemberText.Of(verdict.Whiteness)).Number("whiteProbability", verdict.Probability);
        PlanJson.WriteBudget(json, budget);
    });

    private static string Lines(LightBudget budget, Stops target, WhitenessVerdict verdict) => TextLines.Of(
        [
            .. budget.Lines.Select(line => (line.Item, $"{Signed(line.Stops)}  {line.Detail}")),
            ("white margin", $"{Signed(budget.Total)}  give or take {MeasureFormat.ThreeDigits(budget.Uncertainty.Value)} stops, {target.Nominal} wanted: {Words(verdict)}"),
        ],
        [.. budget.Lines.Select(line => $"{line.Item}: {Bibliography.Cite(line.SourceKey, line.SourceLocator)}").Prepend("Sources")]);

    private static string Words(WhitenessVerdict verdict)
    {
        var percent = verdict.Probability switch
        {
            > 0.99 => "over 99 %",
            < 0.01 => "under 1 %",
            var probability => MeasureFormat.Percent(Math.Round(probability, 2)),
        };
        return verdict.Whiteness switch
        {
            Whiteness.White => $"the panel burns out to white, with a probability of {percent}",
            Whiteness.AtTheEdge => $"at the edge, the panel burns out to white with a probability of {percent}",
            _ => $"the panel stays grey; it burns out with a probability of {percent}",
        };
    }

    private static string Signed(Stops stops) => FormattableString.Invariant($"{stops.Value,7:+0.00;-0.00;0.00} stops");
}
