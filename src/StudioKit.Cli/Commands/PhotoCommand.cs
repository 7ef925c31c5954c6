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

        With --ladder the frames are of the bare panel, one for each power named, and the white margin of every part of the frame
        is measured.

        Example: studiokit photo test.jpg --power 1/8 --distance "25 cm" --out frames
        Example: studiokit photo a.jpg b.jpg c.jpg --ladder 1/32 --ladder 1/16 --ladder 1/8
        """;

    private readonly CommandHost _host;
    private readonly Argument<string[]> _frames = new("frames") { Description = "Picture files: JPEG, PNG or TIFF.", Arity = ArgumentArity.OneOrMore };
    private readonly Option<bool> _bare = new("--bare") { Description = "The frames show the panel alone, no subject." };
    private readonly Option<string[]> _ladder = new("--ladder") { Description = "Power of each frame in turn, e.g. 1/16; makes them a power ladder." };
    private readonly Option<FlashPower> _power = QuantityOption.Optional("--power", "Power of the flash beneath.", QuantityText.TryPower, default(FlashPower));
    private readonly Option<FlashPower> _lowest = QuantityOption.Optional("--lowest-power", "Its lowest power.", QuantityText.TryPower, new FlashPower(1.0 / 128));
    private readonly Option<Length> _distance = QuantityOption.Optional("--distance", "Flash beneath to panel.", QuantityText.TryLength, Length.Zero);
    private readonly Option<Length> _nearest = QuantityOption.Optional("--nearest", "How near the flash can stand.", QuantityText.TryLength, Length.FromCentimeters(10));
    private readonly Option<Stops> _target = QuantityOption.Optional("--target", "Margin over clipping to aim for.", QuantityText.TryStops, new Stops(1.0 / 3));
    private readonly Option<string?> _out = new("--out") { Description = "Folder for a small picture of each frame with what is not white hatched." };
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
        command.SetAction(parsed => (int)photo.Run(parsed));
        return command;
    }

    private ExitCode Run(ParseResult parsed)
    {
        var paths = parsed.GetRequiredValue(_frames);
        var powers = parsed.GetValue(_ladder) ?? [];
        var isBare = parsed.GetValue(_bare) || powers.Length > 0;
        var results = paths.Select(path => isBare ? TestFrame.AnalyseBarePanel(path) : TestFrame.Analyse(path)).ToList();
        var code = FieldFaults.Print(_host, results.SelectMany(result => result.Diagnostics));
        var frames = results.Where(result => result.IsSound).Select(result => result.Value!).ToList();
        WritePictures(parsed, frames);
        if (powers.Length > 0)
        {
            return code == ExitCode.Done ? RunLadder(parsed, frames, powers) : code;
        }

        if (parsed.GetValue(_json))
        {
            _host.Output.WriteLine(JsonReport.Object(json => json.List("frames", frames, frame => PhotoReport.Write(json, frame, Advice(parsed, frame)))));
        }
        else
        {
            frames.ForEach(frame => _host.Output.WriteLine(PhotoReport.Lines(frame, Advice(parsed, frame)) + Environment.NewLine));
        }

        return code;
    }

    private ExitCode RunLadder(ParseResult parsed, List<FrameAnalysis> frames, string[] powers)
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

            rungs.Add(new LadderFrame(power, frame));
        }

        var measured = PowerLadder.Measure(rungs);
        if (!measured.IsSound)
        {
            return FieldFaults.Print(_host, measured.Diagnostics);
        }

        var flash = Beneath(parsed) ?? new BeneathFlash(
            rungs.MaxBy(rung => rung.Power.Fraction)!.Power, parsed.GetValue(_lowest), Length.FromMeters(1), Length.FromMeters(1000));
        var advice = WhiteBackgroundAdvice.After(measured.Value, flash, parsed.GetValue(_target).Value);
        _host.Output.WriteLine(parsed.GetValue(_json)
            ? JsonReport.Object(json => PhotoReport.Write(json, measured.Value, flash.Power, advice))
            : PhotoReport.Lines(measured.Value, flash.Power, advice));
        return ExitCode.Done;
    }

    private WhiteAdvice? Advice(ParseResult parsed, FrameAnalysis frame) =>
        Beneath(parsed) is { } flash ? WhiteBackgroundAdvice.After(frame, flash, Math.Max(0, parsed.GetValue(_target).Value)) : null;

    private BeneathFlash? Beneath(ParseResult parsed) => parsed.GetValue(_power) is { Fraction: > 0 } power && parsed.GetValue(_distance) > Length.Zero
        ? new BeneathFlash(power, parsed.GetValue(_lowest), parsed.GetValue(_distance), parsed.GetValue(_nearest))
        : null;

    private void WritePictures(ParseResult parsed, List<FrameAnalysis> frames)
    {
        if (parsed.GetValue(_out) is { } folder && frames.Count > 0)
        {
            var files = frames.Select(frame => (Path.GetFileNameWithoutExtension(frame.Path) + ".white.png", (ReadOnlyMemory<byte>)FramePictureMap.Png(frame)));
            foreach (var path in WrittenFiles.In(folder, parsed.GetValue(_force)).Write([.. files]))
            {
                _host.Error.WriteLine($"wrote {path}");
            }
        }
    }
}
