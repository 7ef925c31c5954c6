using System.CommandLine;
using StudioKit.Cli.Tables;
using StudioKit.Kits;
using StudioKit.Kits.Quantities;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Sheets.Json;
using StudioKit.Wording;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit optics</c>: close-up arithmetic of one lens at one extension, without a kit file.</summary>
internal static class OpticsCommand
{
    private const string Text =
        """
        Magnification, distances, effective f-number, field, depth of field and diffraction of a unit-focusing lens at an extension.

        Numbers are taken as typed: f/11 is 11, not the 11.31 behind a lens's mark.

        Example: studiokit optics --focal-length "55 mm" --extension "55 mm" --aperture f/16 --sensor "36 mm x 24 mm"
        """;

    public static Command Create(CommandHost host)
    {
        var focalLength = QuantityOption.Required<Length>("--focal-length", "Focal length, e.g. \"55 mm\".", Length("1 mm", "2 m"));
        var extension = QuantityOption.Required<Length>(
            "--extension", "Extension beyond infinity focus, tubes and the lens's own together, e.g. \"55 mm\".", Length("0.01 mm", "2 m"));
        var aperture = QuantityOption.Required<FNumber>("--aperture", "f-number set on the lens, e.g. f/16.", QuantityOption.Between<FNumber>(QuantityText.TryTypedFNumber, value => value.Value, "f/0.5", "f/256"));
        var sensor = QuantityOption.Required<(Length Width, Length Height)>("--sensor", "Sensor, e.g. \"36 mm x 24 mm\".", QuantityOption.Between<(Length Width, Length Height)>(TrySize, size => Math.Min(size.Width.Millimeters, size.Height.Millimeters), "2 mm x 2 mm", "150 mm x 150 mm"));
        var pupilRatio = QuantityOption.Optional<double?>("--pupil-ratio", "Exit over entrance pupil diameter, e.g. 1.4; assumed from the focal length where left out.", QuantityOption.Between<double?>(TryOptionalFactor, value => value ?? 0, "0.1", "10"), null);
        var blur = QuantityOption.Optional<Length?>(
            "--circle-of-confusion", "Greatest blur that passes for sharp, e.g. \"0.02 mm\"; the sensor's diagonal / 1500 where left out.", QuantityOption.Between<Length?>(TryOptionalLength, value => value?.Millimeters ?? 0, "0.1 um", "1 mm"), null);
        var wavelength = QuantityOption.Optional(
            "--wavelength", "Wavelength for the Airy disc, e.g. \"480 nm\".", Length("100 nm", "2000 nm"), UnitsNet.Length.FromNanometers(550));
        var json = JsonOption.Create();
        var command = new Command("optics", Text) { focalLength, extension, aperture, sensor, pupilRatio, blur, wavelength, json };
        command.SetAction(parsed =>
        {
            var (width, height) = parsed.GetRequiredValue(sensor);
            var report = OpticsReport.Of(
                parsed.GetRequiredValue(focalLength), parsed.GetRequiredValue(extension), parsed.GetRequiredValue(aperture), width, height,
                parsed.GetValue(pupilRatio), parsed.GetValue(blur), parsed.GetRequiredValue(wavelength));
            host.Output.WriteLine(parsed.GetValue(json) ? Json(report) : Lines(report));
            return (int)ExitCode.Done;
        });
        return command;
    }

    private static string Json(OpticsReport report) => JsonReport.Document(json => json
        .Number("magnification", report.Stack.Magnification.Value)
        .Millimetres("extension", report.Stack.Extension)
        .Millimetres("objectDistance", report.Stack.ObjectDistance)
        .Millimetres("subjectToSensor", report.Stack.SubjectToSensor)
        .Number("effectiveFNumber", report.Stack.EffectiveFNumber.Value)
        .Number("exposureLossStops", report.Stack.ExposureLossStops)
        .Millimetres("fieldWidth", report.Stack.FieldWidth)
        .Millimetres("fieldHeight", report.Stack.FieldHeight)
        .Millimetres("depthOfField", report.DepthOfField)
        .Millimetres("circleOfConfusion", report.CircleOfConfusion)
        .Micrometres("airyDisc", report.AiryDisc)
        .Micrometres("rayleighSeparation", report.RayleighSeparation)
        .Micrometres("rayleighSeparationAtSubject", report.RayleighSeparationAtSubject)
        .Number("exposureUncertaintyStops", report.Stack.ExposureUncertainty.Value)
        .Millimetres("workingDistance", report.Stack.WorkingDistance)
        .Millimetres("workingDistanceUncertainty", report.Stack.WorkingDistanceUncertainty)
        .List("assumptions", report.Stack.Assumptions, assumption => LensAssumptionJson.Write(json, assumption))
        .Texts("caveats", report.Stack.Caveats));

    private static string Lines(OpticsReport report) => TextLines.Of(
        [
            ("magnification", report.Stack.Magnification.Nominal),
            ("extension", PlanFormat.Millimetres(report.Stack.Extension)),
            ("subject to front principal plane", PlanFormat.Millimetres(report.Stack.ObjectDistance)),
            ("front glass to subject", PlanFormat.GiveOrTake(report.Stack.WorkingDistance, report.Stack.WorkingDistanceUncertainty)),
            ("subject to sensor", PlanFormat.Millimetres(report.Stack.SubjectToSensor)),
            ("effective f-number", $"f/{MeasureFormat.ThreeDigits(report.Stack.EffectiveFNumber.Value)}"),
            ("exposure loss", $"{MeasureFormat.ThreeDigits(report.Stack.ExposureLossStops)} ± {MeasureFormat.ThreeDigits(report.Stack.ExposureUncertainty.Value)} stops"),
            ("field", PlanFormat.Rectangle(report.Stack.FieldWidth, report.Stack.FieldHeight)),
            ("depth of field", $"{PlanFormat.Millimetres(report.DepthOfField)} at a circle of confusion of {PlanFormat.Micrometres(report.CircleOfConfusion)}"),
            ("Airy disc at the sensor", $"{PlanFormat.Micrometres(report.AiryDisc)} across, to its first dark ring"),
            ("two points part (Rayleigh)", $"{PlanFormat.Micrometres(report.RayleighSeparation)} apart at the sensor, {PlanFormat.Micrometres(report.RayleighSeparationAtSubject)} at the subject"),
        ],
        [.. report.Stack.Caveats, .. Assumed(report)]);

    private static IEnumerable<string> Assumed(OpticsReport report) =>
        LensAssumptionText.Of("the lens", report.Stack.Assumptions) is { } sentence ? [sentence] : [];

    private static TryRead<Length> Length(string least, string most) => QuantityOption.Between<Length>(QuantityText.TryLength, value => value.Millimeters, least, most);

    private static bool TrySize(string text, out (Length Width, Length Height) size, out string problem)
    {
        var read = QuantityText.TrySize(text, out var width, out var height, out problem);
        size = (width, height);
        return read;
    }

    private static bool TryOptionalFactor(string text, out double? value, out string problem)
    {
        var read = QuantityText.TryFactor(text, out var factor, out problem);
        value = factor;
        return read;
    }

    private static bool TryOptionalLength(string text, out Length? value, out string problem)
    {
        var read = QuantityText.TryLength(text, out var length, out problem);
        value = length;
        return read;
    }
}
