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
            "--guide-number", "Guide number at full power and ISO 100, e.g. \"30 m\".", QuantityText.TryGuideNumber);
        var power = QuantityOption.Required<FlashPower>("--power", "Power of the flash, e.g. 1/5 or \"1/8 +1/3\".", QuantityText.TryTypedPower);
        var distance = QuantityOption.Required<Length>("--distance", "Flash to panel, e.g. \"45 cm\".", QuantityText.TryLength);
        var transmittance = QuantityOption.Required<double>("--transmittance", "Share of the light the panel lets through, e.g. 0.5 or \"50 %\".", QuantityText.TryRatio);
        var aperture = QuantityOption.Required<FNumber>("--aperture", "f-number set on the lens, e.g. f/16.", QuantityText.TryTypedFNumber);
        var magnification = QuantityOption.Required<Magnification>("--magnification", "Magnification, e.g. 1 or 1:2.", QuantityText.TryMagnification);
        var iso = QuantityOption.Required<IsoSpeed>("--iso", "ISO speed, e.g. 500.", QuantityText.TryIso);
        var pupilRatio = QuantityOption.Optional<double>("--pupil-ratio", "Exit over entrance pupil diameter; 1 where unknown.", QuantityText.TryFactor, 1);
        var outdoors = QuantityOption.Optional(
            "--outdoor-correction", "Stops that a guide number loses outdoors; 0 gives the bare formula.", QuantityText.TryStops, new Stops(-0.5));
        var json = JsonOption.Create();
        var command = new Command("exposure", Text)
        {
            guideNumber, power, distance, transmittance, aperture, magnification, iso, pupilRatio, outdoors, json,
        };
        command.SetAction(parsed =>
        {
            var budget = WhiteMarginReport.Of(
                parsed.GetRequiredValue(guideNumber), parsed.GetRequiredValue(power), parsed.GetRequiredValue(distance),
                parsed.GetRequiredValue(transmittance), parsed.GetRequiredValue(aperture), parsed.GetRequiredValue(magnification),
                parsed.GetRequiredValue(pupilRatio), parsed.GetRequiredValue(iso), parsed.GetRequiredValue(outdoors));
            host.Output.WriteLine(parsed.GetValue(json) ? Json(budget) : Lines(budget));
            return (int)ExitCode.Done;
        });
        return command;
    }

    private static string Json(LightBudget budget) => JsonReport.Document(json =>
    {
        json.Number("whiteMarginStops", budget.Total.Value).Number("uncertaintyStops", budget.Uncertainty.Value);
        PlanJson.WriteBudget(json, budget);
    });

    private static string Lines(LightBudget budget) => TextLines.Of(
        [
            .. budget.Lines.Select(line => (line.Item, $"{Signed(line.Stops)}  {line.Detail}")),
            ("white margin", $"{Signed(budget.Total)}  {Verdict(budget)}"),
        ],
        [.. budget.Lines.Select(line => $"{line.Item}: {Bibliography.Cite(line.SourceKey, line.SourceLocator)}").Prepend("Sources")]);

    private static string Verdict(LightBudget budget) =>
        $"give or take {PlanFormat.ThreeDigits(budget.Uncertainty.Value)} stops: the panel {(budget.Total.Value >= 0 ? "burns out to white" : "stays grey")}";

    private static string Signed(Stops stops) => FormattableString.Invariant($"{stops.Value,7:+0.00;-0.00;0.00} stops");
}
