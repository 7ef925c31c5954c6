using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.FieldFiles.Frames;
using StudioKit.Sheets.Json;

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
    private readonly PhotoOptions _options;

    private PhotoCommand(CommandHost host) => (_host, _options) = (host, new PhotoOptions(host));

    public static Command Create(CommandHost host)
    {
        var photo = new PhotoCommand(host);
        var command = new Command("photo", Text);
        photo._options.AddTo(command);
        command.SetAction(async (parsed, _) => (int)await photo.RunAsync(parsed));
        return command;
    }

    private async Task<ExitCode> RunAsync(ParseResult parsed)
    {
        if (!_options.Plan.TryRead(parsed, _host, out var plan))
        {
            return ExitCode.BadInput;
        }

        var paths = parsed.GetRequiredValue(_options.Frames);
        var powers = parsed.GetValue(_options.Ladder) ?? [];
        var isBare = parsed.GetValue(_options.Bare) || powers.Length > 0;
        var results = await TestFrameBatch.AnalyseAsync(paths, isBare, areDrawn: parsed.GetValue(_options.Out) is not null);
        var code = FieldFaults.Print(_host, results.SelectMany(result => result.Diagnostics));
        var analysed = results.Where(result => result.IsSound).Select(result => result.Value!).ToList();
        _options.WriteFiles(parsed, analysed.Where(frame => frame.Picture is not null)
            .Select(frame => (Path.GetFileNameWithoutExtension(frame.Analysis.Path) + ".white.png", frame.Picture!)));
        var frames = analysed.ConvertAll(frame => frame.Analysis);
        if (powers.Length > 0)
        {
            return code == ExitCode.Done ? new PhotoLadder(_host, _options).Run(parsed, frames, powers, plan) : code;
        }

        var advised = frames.Select(frame => (Frame: frame, Advice: Advice(parsed, frame, plan, ref code))).ToList();
        if (parsed.GetValue(_options.Json))
        {
            _host.Output.WriteLine(JsonReport.Document(json => json.List("frames", advised, entry => PhotoReport.Write(json, entry.Frame, entry.Advice))));
        }
        else
        {
            advised.ForEach(entry => _host.Output.WriteLine(PhotoReport.Lines(entry.Frame, entry.Advice) + Environment.NewLine));
        }

        return code;
    }

    private WhiteAdvice? Advice(ParseResult parsed, FrameAnalysis frame, PhotoPlan? plan, ref ExitCode code)
    {
        if (plan is null)
        {
            return _options.Beneath(parsed) is { } beneath ? TestFrameAdvice.After(frame, beneath, _options.TargetOf(parsed, null)) : null;
        }

        var place = plan.PlaceOf(frame);
        if (!place.IsSound)
        {
            code = FieldFaults.Print(_host, place.Diagnostics);
            return null;
        }

        if (plan.FlashAt(place.Value, _options.Shot(parsed), parsed.GetValue(_options.Nearest)) is not { } flash)
        {
            code = _options.NoPower();
            return null;
        }

        var advice = TestFrameAdvice.After(frame, flash, _options.TargetOf(parsed, place.Value.SetUp));
        return advice with { Sentences = [.. advice.Sentences, .. SettingsDifference.Of(frame.Settings, plan.ExposureAt(place.Value))] };
    }
}
