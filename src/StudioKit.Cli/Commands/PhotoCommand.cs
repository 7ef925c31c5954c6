using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Cli.Usage;
using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.FieldFiles.Frames;
using StudioKit.Kits;
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
        is measured; with --kit it is compared with the plan's own map. The ladder also shows the camera's tone curve, which
        --learn-curve keeps for later frames. A ladder whose frames do not brighten as its powers say is refused.

        Example: studiokit photo test.jpg --kit kits/fen-edge.yaml --framing "reed 55 at 1:2" --out frames
        Example: studiokit photo test.jpg --power 1/8 --distance "25 cm"
        Example: studiokit photo a.jpg b.jpg c.jpg --ladder 1/32,1/16,1/8
        Example: studiokit photo panel-1-32.jpg panel-1-16.jpg panel-1-8.jpg --ladder names --kit kits/fen-edge.yaml --framing "reed 55 at 1:2" --pitch 60° --learn-curve
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
        if (parsed.GetValue(_options.LearnCurve) && (powers.Length == 0 || plan is null))
        {
            _host.Error.WriteLine("studiokit: --learn-curve needs a power ladder and the kit: add --ladder with the powers, and --kit.");
            return ExitCode.BadInput;
        }

        if (parsed.GetValue(_options.LearnCurve) && !CorrectionFile.IsPossible(_options.Plan.KitPath(parsed)!, _host))
        {
            return ExitCode.BadInput;
        }

        if (powers.Length > 0 && paths.FirstOrDefault(path => !File.Exists(path) && QuantityText.TryPower(path, out _, out _)) is { } stray)
        {
            _host.Report(UsageCodes.BadUsage, $"'{stray}' is a power and no picture; write several as --ladder 1/32,1/16,1/8.");
            return ExitCode.BadInput;
        }

        // A ladder is read by the standard curve, from which it learns the camera's own.
        var curve = powers.Length > 0 ? null : _options.KeptCurve(parsed, plan);
        var results = await TestFrameBatch.AnalyseAsync(paths, isBare, areDrawn: parsed.GetValue(_options.Out) is not null, curve);
        var code = FieldFaults.Print(_host, results.SelectMany(result => result.Diagnostics));
        var analysed = results.Where(result => result.IsSound).Select(result => result.Value!).ToList();
        _options.WriteFiles(parsed, analysed.Where(frame => frame.Picture is not null)
            .Select(frame => (Path.GetFileNameWithoutExtension(frame.Analysis.Path) + ".white.png", frame.Picture!)));
        var frames = analysed.ConvertAll(frame => frame.Analysis);
        if (powers.Length > 0)
        {
            return code == ExitCode.Done ? new PhotoLadder(_host, _options).Run(parsed, frames, powers, plan) : code;
        }

        var reports = new List<FrameReport>();
        foreach (var frame in frames)
        {
            reports.Add(Report(parsed, frame, plan, ref code));
        }

        if (parsed.GetValue(_options.Json))
        {
            _host.Output.WriteLine(JsonReport.Document(json => json.List("frames", reports, entry => PhotoReport.Write(json, entry))));
        }
        else
        {
            reports.ForEach(entry => _host.Output.WriteLine(PhotoReport.Lines(entry) + Environment.NewLine));
        }

        return code;
    }

    private FrameReport Report(ParseResult parsed, FrameAnalysis frame, TestFramePlan? plan, ref ExitCode code)
    {
        if (plan is null)
        {
            var beneath = _options.Beneath(parsed) ?? (_options.Shot(parsed).Power is { } power ? _options.BeneathUnmoved(parsed, power) : null);
            return new FrameReport(frame, FrameFinding.Of(frame, new FrameLimits { Flash = beneath }))
            {
                Advice = beneath is null ? null : TestFrameAdvice.After(frame, beneath, _options.TargetOf(parsed, null)),
            };
        }

        var place = plan.PlaceOf(frame);
        if (!place.IsSound)
        {
            code = FieldFaults.Print(_host, place.Diagnostics);
            return new FrameReport(frame, FrameFinding.Of(frame, new FrameLimits()));
        }

        var flash = plan.FlashAt(place.Value, _options.Shot(parsed), parsed.GetValue(_options.Nearest));
        return plan.Report(frame, place.Value, flash, parsed.GetValue(_options.Target));
    }
}
