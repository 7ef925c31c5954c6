using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Json;
using StudioKit.Cli.Tables;
using StudioKit.Field.Analysis;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Cli.Commands;

/// <summary><c>studiokit photo</c>: reads test frames and says where the background is not white.</summary>
internal sealed class PhotoCommand
{
    private const string Text =
        """
        Reads test frames: how much of the background is white, where it is not and by how many stops, and what to turn.

        With --kit the advice starts from the plan: its lower flash, power, distance and target. The framing is told by the file's focal
        length where only one fits. --power and --distance say what was set if it was not as planned.

        With --ladder the frames are of the bare panel, one for each power named, and the white margin of every part of the frame
        is measured; with --kit it is compared with the plan's own map.

        Example: studiokit photo test.jpg --kit kits/fen-edge.yaml --framing "reed 55 at 1:2" --out frames
        Example: studiokit photo test.jpg --power 1/8 --distance "25 cm"
        Example: studiokit photo a.jpg b.jpg c.jpg --ladder 1/32 --ladder 1/16 --ladder 1/8
        """;

    private readonly CommandHost _host;
    private readonly Argument<string[]> _frames = new("frames") { Description = "Picture files: JPEG, PNG or TIFF.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<bool> _bare = new("--bare") { Description = "The frames show the panel alone, no subject." };
    private readonly Option<string[]> _ladder = new("--ladder") { Description = "Power of each frame in turn, e.g. 1/16; makes them a power ladder." };
    private readonly Option<FlashPower> _power = QuantityOption.Optional("--power", "Power of the lower flash.", QuantityText.TryPower, default(FlashPower));
    private readonly Option<FlashPower> _lowest = QuantityOption.Optional("--lowest-power", "Its lowest power.", QuantityText.TryPower, new FlashPower(1.0 / 128));
    private readonly Option<Length> _distance = QuantityOption.Optional("--distance", "Lower flash to panel.", QuantityText.TryLength, Length.Zero);
    private readonly Option<Length> _nearest = QuantityOption.Optional("--nearest", "How near the flash can stand.", QuantityText.TryLength, Length.FromCentimeters(10));
    private readonly Option<Stops?> _target = QuantityOption.Optional<Stops?>("--target", "Margin over clipping to aim for; the set-up's, or 1/3 stop.", TryStops, null);
    private readonly PlanOptions _plan = new();
    private readonly Option<string?> _out = new("--out") { Description = "Folder for pictures: each frame small with what is not white hatched, and a ladder's map." };
    private readonly Option<bool> _force = ForceOption.Create();
    private readonly Option<bool> _json = JsonOption.Create();

    private PhotoCommand(CommandHost host) => _host = host;

    public static Command Create(CommandHost host)
    {
        var photo = new PhotoCommand(host);
        var command = new Command("photo", Text)
        {
            photo._frames, photo._bare, photo._ladder, photo._power, photo._lowest, photo._distance, photo._nearest, photo._target,
            photo._out, photo._force, photo._json,
        };
        photo._plan.AddTo(command);
        command.SetAction(parsed => (int)photo.Run(parsed));
        return command;
    }

    private static bool TryStops(string text, out Stops? value, out string problem)
    {
        var read = QuantityText.TryStops(text, out var stops, out problem);
        value = stops;
        return read;
    }

    private ExitCode Run(ParseResult parsed)
    {
        if (!_plan.TryRead(parsed, _host, out var plan))
        {
            return ExitCode.BadInput;
        }

        var paths = parsed.GetRequiredValue(_frames);
        var powers = parsed.GetValue(_ladder) ?? [];
        var isBare = parsed.GetValue(_bare) || powers.Length > 0;
        var results = paths.Select(path => isBare ? TestFrame.AnalyseBarePanel(path) : TestFrame.Analyse(path)).ToList();
        var code = FieldFaults.Print(_host, results.SelectMany(result => result.Diagnostics));
        var frames = results.Where(result => result.IsSound).Select(result => result.Value!).ToList();
        WriteFiles(parsed, [.. frames.Select(frame => (Path.GetFileNameWithoutExtension(frame.Path) + ".white.png", FramePictureMap.Png(frame)))]);
        if (powers.Length > 0)
        {
            return code == ExitCode.Done ? RunLadder(parsed, frames, powers, plan) : code;
        }

        var advised = frames.Select(frame => (Frame: frame, Advice: Advice(parsed, frame, plan, ref code))).ToList();
        if (parsed.GetValue(_json))
        {
            _host.Output.WriteLine(JsonReport.Object(json => json.List("frames", advised, entry => PhotoReport.Write(json, entry.Frame, entry.Advice))));
        }
        else
        {
            advised.ForEach(entry => _host.Output.WriteLine(PhotoReport.Lines(entry.Frame, entry.Advice) + Environment.NewLine));
        }

        return code;
    }

    private ExitCode RunLadder(ParseResult parsed, List<FrameAnalysis> frames, string[] powers, PhotoPlan? plan)
    {
        if (powers.Length != frames.Count)
        {
            _host.Error.WriteLine($"studiokit: {frames.Count} frames but {powers.Length} powers; name one --ladder for each frame, in the same order.");
            return ExitCode.BadInput;
        }

        var rungs = new List<LadderFrame>();
        foreach (var (frame, text) in frames.Zip(powers))
        {
            if (!QuantityText.TryPower(text, out var power, out var problem))
            {
                _host.Error.WriteLine($"studiokit: --ladder: {problem}");
                return ExitCode.BadInput;
            }

            rungs.Add(new LadderFrame(ThirdStopSeries.FromMark(power), frame));
        }

        var measured = PowerLadder.Measure(rungs);
        if (!measured.IsSound)
        {
            return FieldFaults.Print(_host, measured.Diagnostics);
        }

        var highest = rungs.MaxBy(rung => rung.Power.Fraction)!.Power;
        return plan is null ? PrintLadder(parsed, measured.Value, highest) : CompareLadder(parsed, measured.Value, frames[0], plan);
    }

    private ExitCode PrintLadder(ParseResult parsed, WhiteMarginMap map, FlashPower highest)
    {
        var flash = Beneath(parsed) ?? new BeneathFlash(highest, parsed.GetValue(_lowest), Length.FromMeters(1), Length.FromMeters(1000));
        var advice = WhiteBackgroundAdvice.After(map, flash, TargetOf(parsed, null));
        WriteFiles(parsed, [("white-margin.svg", LadderDrawing.Svg(map, flash.Power, null))]);
        _host.Output.WriteLine(parsed.GetValue(_json)
            ? JsonReport.Object(json => LadderReport.Write(json, map, flash.Power, advice, null))
            : LadderReport.Lines(map, flash.Power, advice, null));
        return ExitCode.Done;
    }

    private ExitCode CompareLadder(ParseResult parsed, WhiteMarginMap map, FrameAnalysis frame, PhotoPlan plan)
    {
        var place = plan.ViewOf(frame);
        if (!place.IsSound)
        {
            return FieldFaults.Print(_host, place.Diagnostics);
        }

        if (plan.FlashAt(place.Value, Shot(parsed), parsed.GetValue(_nearest)) is not { } flash)
        {
            return NoPower();
        }

        var compared = MarginComparison.Of(map, frame, place.Value, flash, plan.Expected);
        if (!compared.IsSound)
        {
            return FieldFaults.Print(_host, compared.Diagnostics);
        }

        var advice = WhiteBackgroundAdvice.After(map, flash, TargetOf(parsed, place.Value.SetUp));
        WriteFiles(parsed, [("white-margin.svg", LadderDrawing.Svg(map, flash.Power, compared.Value))]);
        _host.Output.WriteLine(parsed.GetValue(_json)
            ? JsonReport.Object(json => LadderReport.Write(json, map, flash.Power, advice, compared.Value))
            : LadderReport.Lines(map, flash.Power, advice, compared.Value));
        return ExitCode.Done;
    }

    private WhiteAdvice? Advice(ParseResult parsed, FrameAnalysis frame, PhotoPlan? plan, ref ExitCode code)
    {
        if (plan is null)
        {
            return Beneath(parsed) is { } beneath ? WhiteBackgroundAdvice.After(frame, beneath, TargetOf(parsed, null)) : null;
        }

        var place = plan.PlaceOf(frame);
        if (!place.IsSound)
        {
            code = FieldFaults.Print(_host, place.Diagnostics);
            return null;
        }

        if (plan.FlashAt(place.Value, Shot(parsed), parsed.GetValue(_nearest)) is not { } flash)
        {
            code = NoPower();
            return null;
        }

        var advice = WhiteBackgroundAdvice.After(frame, flash, TargetOf(parsed, place.Value.SetUp));
        return advice with { Sentences = [.. advice.Sentences, .. SettingsDifference.Of(frame.Settings, plan.ExposureAt(place.Value))] };
    }

    private ExitCode NoPower()
    {
        _host.Error.WriteLine("studiokit: the plan finds no power for the lower flash here; say what was set with --power.");
        return ExitCode.BadInput;
    }

    private double TargetOf(ParseResult parsed, SetUpSpec? setUp) =>
        Math.Max(0, (parsed.GetValue(_target) ?? setUp?.TargetWhiteMargin ?? new Stops(1.0 / 3)).Value);

    private (FlashPower? Power, Length? Distance) Shot(ParseResult parsed) => (
        parsed.GetValue(_power) is { Fraction: > 0 } power ? ThirdStopSeries.FromMark(power) : null,
        parsed.GetValue(_distance) is var distance && distance > Length.Zero ? distance : null);

    private BeneathFlash? Beneath(ParseResult parsed) => Shot(parsed) is ({ } power, { } distance)
        ? new BeneathFlash(power, parsed.GetValue(_lowest), distance, parsed.GetValue(_nearest))
        : null;

    private void WriteFiles(ParseResult parsed, IReadOnlyList<(string Name, byte[] Content)> files)
    {
        if (parsed.GetValue(_out) is { } folder && files.Count > 0)
        {
            foreach (var path in WrittenFiles.In(folder, parsed.GetValue(_force)).Write([.. files.Select(file => (file.Name, (ReadOnlyMemory<byte>)file.Content))]))
            {
                _host.Error.WriteLine($"wrote {path}");
            }
        }
    }
}
