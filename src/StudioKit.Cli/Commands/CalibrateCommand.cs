using System.CommandLine;
using System.Globalization;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Field;
using StudioKit.Field.Calibration;
using StudioKit.FieldFiles.Frames;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit calibrate</c>: corrects a kit's figures from readings.</summary>
internal sealed class CalibrateCommand
{
    private const string Text =
        """
        Corrects a kit's guide numbers, panel transmittance and camera clip point from readings, and writes the corrections to a
        file beside the kit, which plan and sheets then use. The kit itself is never changed.

        A table of readings has a column for whatever was set and one for what was read; the plan says what should have been read:
          name, kind, power, reading; flash, set-up, framing, pitch, distance, f-number, iso, reflectance, uncertainty as needed.
        Kinds: flash-meter (an incident meter in the beam) and panel-meter (face down on the sheet, straight above the flash), read as
        "52 lx·s", "f/11" at the row's ISO or "EV 4.4"; white-margin (darkest part of the bare sheet) and card-in-frame, in stops above
        clipping. --frame takes pictures of the bare sheet themselves, each with its --power.

        Example: studiokit calibrate kits/fen-edge.yaml --readings readings.csv
        Example: studiokit calibrate kits/fen-edge.yaml --frame a.jpg --power 1/32 --frame b.jpg --power 1/16 --framing "reed 55 at 1:2" --pitch 60°
        """;

    private readonly CommandHost _host;
    private readonly Argument<string> _kit = KitInput.Argument();
    private readonly Option<string?> _table = new("--readings") { Description = "Table of readings, comma-separated." };
    private readonly Option<string[]> _frames = new("--frame") { Description = "Test frame of the bare sheet." };
    private readonly Option<string[]> _powers = new("--power") { Description = "Power of the lower flash: one for all frames, or one for each in turn." };
    private readonly Option<Length> _distance = QuantityOption.Optional("--distance", "Lower flash to panel, where it was not as planned.", QuantityText.TryLength, Length.Zero);
    private readonly PlanOptions _planned = new();
    private readonly Option<string?> _date = new("--date") { Description = "Day of the readings, e.g. 2026-05-09; today where left out." };
    private readonly Option<bool> _force = ForceOption.Create();
    private readonly Option<bool> _json = JsonOption.Create();

    private CalibrateCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host)
    {
        var calibrate = new CalibrateCommand(host);
        var command = new Command("calibrate", Text)
        {
            calibrate._kit, calibrate._table, calibrate._frames, calibrate._powers, calibrate._distance, calibrate._date, calibrate._force, calibrate._json,
        };
        calibrate._planned.AddTo(command, withKit: false);
        command.SetAction(parsed => (int)calibrate.Run(parsed));
        return command;
    }

    private ExitCode Run(ParseResult parsed)
    {
        var day = DateOnly.FromDateTime(_host.Clock.GetLocalNow().Date);
        if (parsed.GetValue(_date) is { } date && !DateOnly.TryParseExact(date, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out day))
        {
            _host.Error.WriteLine($"studiokit: --date: '{date}' is not a date; write it as 2026-05-09.");
            return ExitCode.BadInput;
        }

        var read = KitInput.ReadAsWritten(parsed.GetRequiredValue(_kit), _host);
        if (read.HasErrors || !TryPowers(parsed, out var powers))
        {
            return ExitCode.BadInput;
        }

        // A slip in the table is told before the plan, which takes longer.
        var table = Table(parsed);
        if (table is { IsSound: false })
        {
            return FieldFaults.Print(_host, table.Diagnostics);
        }

        var plan = KitPlanner.Plan(read);
        var (readings, faults) = (new List<CalibrationReading>(), new List<FieldDiagnostic>());
        AddTable(table?.Value ?? [], plan, readings, faults);
        AddFrames(parsed, plan, powers, readings, faults);
        if (faults.Count > 0)
        {
            return FieldFaults.Print(_host, faults);
        }

        var solved = KitCalibration.Solve(readings, CalibrationPrior.Of(read));
        return solved.IsSound ? Finish(parsed, read, solved.Value, day) : FieldFaults.Print(_host, solved.Diagnostics);
    }

    private bool TryPowers(ParseResult parsed, out List<FlashPower> powers)
    {
        powers = [];
        foreach (var text in parsed.GetValue(_powers) ?? [])
        {
            if (!QuantityText.TryPower(text, out var power, out var problem))
            {
                _host.Error.WriteLine($"studiokit: --power: {problem}");
                return false;
            }

            powers.Add(ThirdStopSeries.FromMark(power));
        }

        var frames = parsed.GetValue(_frames)?.Length ?? 0;
        if (powers.Count == frames || (powers.Count == 1 && frames > 0))
        {
            return true;
        }

        _host.Error.WriteLine($"studiokit: {frames} frames but {powers.Count} powers; name one --power for all frames, or one for each in the same order.");
        return false;
    }

    private FieldResult<IReadOnlyList<FieldReading>>? Table(ParseResult parsed) =>
        parsed.GetValue(_table) is { } path ? FieldReadingTable.Parse(path, InputFile.Text(path, FieldReadingTable.MostBytes)) : null;

    private static void AddTable(IReadOnlyList<FieldReading> table, Plan plan, List<CalibrationReading> readings, List<FieldDiagnostic> faults)
    {
        var planned = new PlannedReadings(plan).Of(table);
        readings.AddRange(planned.Value ?? []);
        faults.AddRange(planned.Diagnostics);
    }

    private void AddFrames(ParseResult parsed, Plan plan, List<FlashPower> powers, List<CalibrationReading> readings, List<FieldDiagnostic> faults)
    {
        var part = _planned.Of(parsed, plan);
        Length? distance = parsed.GetValue(_distance) is var given && given > Length.Zero ? given : null;
        var curve = CorrectionFile.Of(parsed.GetRequiredValue(_kit), plan.Kit.Name)?.ToneCurve;
        foreach (var (path, i) in (parsed.GetValue(_frames) ?? []).Select((path, i) => (path, i)))
        {
            var frame = TestFrameFile.AnalyseBarePanel(path, curve);
            var place = frame.IsSound ? part.ViewOf(frame.Value) : null;
            var reading = place is { IsSound: true }
                ? FrameReading.Of(frame.Value!, place.Value, new ShotSettings(powers[Math.Min(i, powers.Count - 1)], distance), part.Expected)
                : null;
            faults.AddRange([.. frame.Diagnostics, .. place?.Diagnostics ?? [], .. reading?.Diagnostics ?? []]);
            readings.AddRange(reading?.Value is { } sound ? [sound] : []);
        }
    }

    private ExitCode Finish(ParseResult parsed, KitReadResult read, CalibrationResult result, DateOnly day)
    {
        var (path, kit) = (parsed.GetRequiredValue(_kit), read.Kit!);
        var correction = KitCorrection.From(kit, result, day) with { ToneCurve = CorrectionFile.Of(path, kit.Name)?.ToneCurve };
        var before = KitPlanner.Plan(KitInput.Corrected(path, read, _host));
        var (target, text) = CorrectionFile.Write(path, correction, parsed.GetValue(_force), _host);
        var cards = CardPowerChange.Between(before, KitPlanner.Plan(correction.ApplyTo(read, text)));
        _host.Output.WriteLine(parsed.GetValue(_json)
            ? CalibrationReport.Json(target, kit, correction, result, cards)
            : CalibrationReport.Lines(kit, correction, result, cards));
        return ExitCode.Done;
    }
}
