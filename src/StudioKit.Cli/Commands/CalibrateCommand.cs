using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Cli.Usage;
using StudioKit.Field.Calibration;
using StudioKit.Field.Calibration.Drift;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit calibrate</c>: corrects a kit's figures from readings.</summary>
internal sealed class CalibrateCommand
{
    private const string Text =
        """
        Corrects a kit's guide numbers, panel transmittance and camera clip point from readings, and writes the corrections to a
        file beside the kit, which plan and sheets then use. The kit itself is never changed. Readings further off than the kit's
        figures can be wrong are left out and named, and nothing is written where the rest contradict each other.

        A table of readings has a column for whatever was set and one for what was read; the plan says what should have been read:
          name, kind, power, reading; flash, set-up, framing, pitch, distance, f-number, iso, reflectance, uncertainty, date as needed.
        Kinds: flash-meter (an incident meter in the beam) and panel-meter (face down on the sheet, straight above the flash), read as
        "52 lx·s", "f/11" at the row's ISO or "EV 4.4"; white-margin (darkest part of the bare sheet) and card-in-frame, in stops above
        clipping. --frame takes pictures of the bare sheet themselves, each with its --power.

        --history holds several outings together, by the dates of their rows, and writes nothing: how each flash, the sheet and the
        clip point drift, with 95 % confidence, and differ from outing to outing; and ranked what each reading that the set-ups allow would tell
        of the cards' white margin next time: how sure it is then, and how often it has to be taken for the margin to be known to --reach.

        Example: studiokit calibrate kits/fen-edge.yaml --readings readings.csv
        Example: studiokit calibrate kits/fen-edge.yaml --frame a.jpg --power 1/32 --frame b.jpg --power 1/16 --framing "reed 55 at 1:2" --pitch 60°
        Example: studiokit calibrate kits/fen-edge.yaml --history --readings may.csv --readings june.csv --readings july.csv
        """;

    private readonly CommandHost _host;
    private readonly Argument<string> _kit = KitInput.Argument();
    private readonly CalibrationInput _input;
    private readonly Option<bool> _history = new("--history") { Description = "Hold several outings together instead: drift, and what to read next time. Writes nothing." };
    private readonly Option<Stops?> _reach = QuantityOption.Optional<Stops?>("--reach", "With --history: how sure the white margin is to be, one standard deviation, e.g. 1/8 stop; 1/6 stop where left out.", TryReach, null);
    private readonly Option<bool> _force = ForceOption.Create();
    private readonly Option<bool> _json = JsonOption.Create();

    private CalibrateCommand(CommandHost host) => (_host, _input) = (host, new CalibrationInput(host));

    public static Command Create(CommandHost host)
    {
        var calibrate = new CalibrateCommand(host);
        var command = new Command("calibrate", Text) { calibrate._kit };
        calibrate._input.AddTo(command);
        command.Options.Add(calibrate._history);
        command.Options.Add(calibrate._reach);
        command.Options.Add(calibrate._force);
        command.Options.Add(calibrate._json);
        command.SetAction(parsed => (int)calibrate.Run(parsed));
        return command;
    }

    private ExitCode Run(ParseResult parsed)
    {
        var path = parsed.GetRequiredValue(_kit);
        if (!parsed.GetValue(_history) && parsed.GetResult(_reach) is { Implicit: false })
        {
            _host.Report(UsageCodes.BadUsage, "--reach is about what to read next; add --history.");
            return ExitCode.BadInput;
        }

        if ((!parsed.GetValue(_history) && !CorrectionFile.IsPossible(path, _host))
            || _input.Day(parsed) is not { } day || KitInput.ReadAsWritten(path, _host) is not { HasErrors: false } read
            || _input.Powers(parsed) is not { } powers || _input.Tables(parsed) is not { } table)
        {
            return ExitCode.BadInput;
        }

        var curve = CorrectionFile.Of(path, read.Kit!.Name)?.ToneCurve;
        if (_input.Read(parsed, KitPlanner.Plan(read), table, powers, curve, day) is not { } readings)
        {
            return ExitCode.BadInput;
        }

        return parsed.GetValue(_history) ? History(parsed, read, readings) : Correct(parsed, read, readings, day);
    }

    private ExitCode Correct(ParseResult parsed, KitReadResult read, IReadOnlyList<DatedReading> readings, DateOnly day)
    {
        var solved = KitCalibration.Solve([.. readings.Select(reading => reading.Reading)], CalibrationPrior.Of(read));
        return solved.IsSound ? Finish(parsed, read, solved.Value, readings.Max(reading => (DateOnly?)reading.Day) ?? day) : FieldFaults.Print(_host, solved.Diagnostics);
    }

    private ExitCode Finish(ParseResult parsed, KitReadResult read, CalibrationResult result, DateOnly day)
    {
        var (path, kit) = (parsed.GetRequiredValue(_kit), read.Kit!);
        var kept = CorrectionFile.Of(path, kit.Name);
        var correction = KitCorrection.From(kit, result, day) with { ToneCurve = kept?.ToneCurve };
        var before = KitPlanner.Plan(KitInput.Corrected(path, read, _host));
        var (target, text) = CorrectionFile.Write(path, correction, parsed.GetValue(_force), _input.Files(parsed), _host);
        if (kept is { CorrectsFigures: true })
        {
            _host.Error.WriteLine(FormattableString.Invariant(
                $"It takes the place of the correction of {kept.Date:yyyy-MM-dd}, whose readings count no longer; name them too with --readings, or hold several outings together with --history."));
        }

        var cards = CardPowerChange.Between(before, KitPlanner.Plan(correction.ApplyTo(read, text)));
        _host.Output.WriteLine(parsed.GetValue(_json)
            ? CalibrationReport.Json(target, kit, correction, result, cards)
            : CalibrationReport.Lines(kit, correction, result, cards));
        return ExitCode.Done;
    }

    private ExitCode History(ParseResult parsed, KitReadResult read, IReadOnlyList<DatedReading> readings)
    {
        if (readings.Count == 0)
        {
            _host.Error.WriteLine("studiokit: --history: there are no readings; name tables with --readings, whose rows have a date.");
            return ExitCode.BadInput;
        }

        var (kit, prior, reach) = (read.Kit!, CalibrationPrior.Of(read), parsed.GetValue(_reach)?.Value ?? NextReadings.UsualReach);
        var history = CalibrationHistory.Of(readings, prior);
        var next = LitCards.Of(kit).Select(cards => new CardsReadings(cards, NextReadings.Of(kit, cards, prior, history.Used, history.Between(cards.Flash), reach))).ToList();
        if (parsed.GetValue(_json))
        {
            _host.Output.WriteLine(HistoryReport.Json(history, next, reach));
        }
        else
        {
            HistoryReport.Write(history, next, reach, _host);
        }

        return ExitCode.Done;
    }

    private static bool TryReach(string text, out Stops? value, out string problem)
    {
        var read = QuantityOption.Between<Stops>(QuantityText.TryStops, stops => stops.Value, "0.02 stop", "2 stops")(text, out var stops, out problem);
        value = stops;
        return read;
    }
}
