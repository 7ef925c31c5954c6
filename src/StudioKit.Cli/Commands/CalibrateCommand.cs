using System.CommandLine;
using System.Globalization;
using System.Text;
using StudioKit.Cli.Files;
using StudioKit.Cli.Json;
using StudioKit.Cli.Tables;
using StudioKit.Field.Calibration;
using StudioKit.Kits;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit calibrate</c>: corrects a kit's figures from readings.</summary>
internal static class CalibrateCommand
{
    private const string Text =
        """
        Corrects a kit's guide numbers, panel transmittance and camera clip point from readings, and writes the corrections to a
        file beside the kit, which the plan then uses. The kit itself is never changed.

        Readings are a table name,kind,flash,planned,measured,uncertainty with the last three in stops. Kinds: flash-meter (an
        incident meter in the beam), panel-meter (face down on the panel), white-margin (a test frame or ladder), card-in-frame.

        Example: studiokit calibrate kits/fen-edge.yaml --readings readings.csv
        """;

    public static Command Create(CommandHost host)
    {
        var kit = KitInput.Argument();
        var readings = new Option<string>("--readings") { Description = "Table of readings.", Required = true };
        var date = new Option<string?>("--date") { Description = "Day of the readings, e.g. 2026-05-09; today where left out." };
        var force = ForceOption.Create();
        var json = JsonOption.Create();
        var command = new Command("calibrate", Text) { kit, readings, date, force, json };
        command.SetAction(parsed => (int)Run(
            host, parsed.GetRequiredValue(kit), parsed.GetRequiredValue(readings), parsed.GetValue(date), parsed.GetValue(force), parsed.GetValue(json)));
        return command;
    }

    private static ExitCode Run(CommandHost host, string kitPath, string readingsPath, string? date, bool force, bool asJson)
    {
        var day = DateOnly.FromDateTime(host.Clock.GetLocalNow().Date);
        if (date is not null && !DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
        {
            host.Error.WriteLine($"studiokit: --date: '{date}' is not a date; write it as 2026-05-09.");
            return ExitCode.BadInput;
        }

        var read = KitInput.ReadAsWritten(kitPath, host);
        if (read.HasErrors)
        {
            return ExitCode.BadInput;
        }

        var readings = CalibrationReadings.Parse(readingsPath, TextFile.Read(readingsPath), [.. read.Kit!.Flashes.Select(flash => flash.Name)]);
        if (!readings.IsSound)
        {
            return FieldFaults.Print(host, readings.Diagnostics);
        }

        var solved = KitCalibration.Solve(readings.Value, new CalibrationPrior());
        return solved.IsSound
            ? Finish(host, kitPath, read.Kit, solved.Value, day, force, asJson)
            : FieldFaults.Print(host, solved.Diagnostics);
    }

    private static ExitCode Finish(CommandHost host, string kitPath, KitSpec kit, CalibrationResult result, DateOnly day, bool force, bool asJson)
    {
        var correction = KitCorrection.From(kit, result, day);
        var target = KitCorrectionFile.PathBeside(kitPath);
        var content = Encoding.UTF8.GetBytes(KitCorrectionFile.Write(correction));
        WrittenFiles.In(WrittenFiles.FolderOf(target), force).Write([(Path.GetFileName(target), content)]);
        host.Output.WriteLine(asJson ? Json(target, correction, result) : Lines(correction, result));
        host.Error.WriteLine($"wrote {target}");
        return ExitCode.Done;
    }

    private static IEnumerable<(string Name, StopsCorrection Correction, string Unit)> Entries(KitCorrection correction)
    {
        foreach (var flash in correction.Flashes)
        {
            yield return ($"guide number of {flash.Flash}", flash.Light, "m");
        }

        if (correction.PanelTransmittance is { } panel)
        {
            yield return ("panel transmittance", panel, "");
        }

        if (correction.CameraClipPoint is { } clip)
        {
            yield return ("camera clip point", clip, "stop");
        }
    }

    private static string Lines(KitCorrection correction, CalibrationResult result)
    {
        var lines = Entries(correction).Select(entry => (entry.Name, string.Create(
            CultureInfo.InvariantCulture,
            $"{entry.Correction.Before:0.##} -> {entry.Correction.After:0.##} {entry.Unit} ({entry.Correction.Stops:+0.00;-0.00} ± {entry.Correction.PlusMinus:0.00} stop)")));
        var readings = result.Residuals.Select(residual => ("  " + residual.Reading.Name, string.Create(
            CultureInfo.InvariantCulture,
            $"{residual.Before:+0.00;-0.00} stop off before, {residual.After:+0.00;-0.00} after{(residual.Disagrees ? ": DISAGREES with the others" : "")}")));
        return TextLines.Of([.. lines, ("readings", ""), .. readings], result.Caveats);
    }

    private static string Json(string target, KitCorrection correction, CalibrationResult result) => JsonReport.Object(json => json
        .Text("file", target)
        .List("corrections", Entries(correction), entry => json
            .Text("quantity", entry.Name).Text("unit", entry.Unit).Number("before", entry.Correction.Before).Number("after", entry.Correction.After)
            .Number("correctionStops", entry.Correction.Stops).Number("uncertaintyStops", entry.Correction.PlusMinus))
        .List("readings", result.Residuals, residual => json
            .Text("name", residual.Reading.Name).Number("beforeStops", residual.Before).Number("afterStops", residual.After)
            .Number("weight", residual.Weight).Flag("disagrees", residual.Disagrees))
        .Texts("caveats", result.Caveats));
}
