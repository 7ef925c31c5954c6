using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Field;
using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Field.Calibration;
using StudioKit.Field.Ladders;
using StudioKit.Physics.Exposure;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary>The power ladder of <c>studiokit photo</c>: the measured map, beside the plan's where there is one.</summary>
internal sealed class PhotoLadder(CommandHost host, PhotoOptions options)
{
    /// <summary>Measures and prints.</summary>
    public ExitCode Run(ParseResult parsed, List<FrameAnalysis> frames, string[] powers, TestFramePlan? plan)
    {
        var rungs = Rungs(frames, powers);
        if (!rungs.IsSound)
        {
            return FieldFaults.Print(host, rungs.Diagnostics);
        }

        var measured = PowerLadder.Measure(rungs.Value, options.KeptCurve(parsed, plan));
        if (!measured.IsSound)
        {
            return FieldFaults.Print(host, measured.Diagnostics);
        }

        if (parsed.GetValue(options.LearnCurve) && !measured.Value.IsCurveLearnt)
        {
            host.Error.WriteLine("studiokit: --learn-curve: the ladder shows too little under clipping; add frames at lower powers.");
            return ExitCode.BadInput;
        }

        var highest = rungs.Value.MaxBy(rung => rung.Power.Fraction)!.Power;
        return plan is null ? Print(parsed, measured.Value, highest) : Compare(parsed, measured.Value, frames[0], plan);
    }

    private static FieldResult<IReadOnlyList<LadderFrame>> Rungs(List<FrameAnalysis> frames, string[] powers) =>
        powers is ["names"] ? LadderPowers.OfNames(frames) : LadderPowers.AsNamed(frames, powers);

    private void Keep(ParseResult parsed, MeasuredMarginMap map, TestFramePlan plan)
    {
        var (path, kit) = (options.Plan.KitPath(parsed)!, plan.Plan.Kit.Name);
        var kept = CorrectionFile.Of(path, kit) ?? new KitCorrection { Kit = kit, Date = DateOnly.FromDateTime(host.Clock.GetLocalNow().Date) };
        CorrectionFile.Write(path, kept with { ToneCurve = map.Curve }, parsed.GetValue(options.Force), parsed.GetRequiredValue(options.Frames), host);
    }

    private ExitCode Print(ParseResult parsed, MeasuredMarginMap map, FlashPower highest)
    {
        var flash = options.Beneath(parsed) ?? options.BeneathUnmoved(parsed, highest);
        return Finish(parsed, new LadderReport(map, flash.Mark) { Advice = TestFrameAdvice.After(map, flash, options.TargetOf(parsed, null)) });
    }

    private ExitCode Compare(ParseResult parsed, MeasuredMarginMap map, FrameAnalysis frame, TestFramePlan plan)
    {
        var place = plan.ViewOf(frame);
        if (!place.IsSound)
        {
            return FieldFaults.Print(host, place.Diagnostics);
        }

        var flash = plan.FlashAt(place.Value, options.Shot(parsed), parsed.GetValue(options.Nearest));
        var compared = MarginComparison.Of(map, frame, place.Value, flash, plan.Expected);
        if (!compared.IsSound)
        {
            return FieldFaults.Print(host, compared.Diagnostics);
        }

        // Whatever can be wrong with the line was told by now.
        if (parsed.GetValue(options.LearnCurve))
        {
            Keep(parsed, map, plan);
        }

        var darkest = map.DarkestAt(flash.Power) is { IsLeast: false } seen ? new Stops(seen.Stops) : (Stops?)null;
        return Finish(parsed, new LadderReport(map, flash.Mark)
        {
            Planned = plan.Advice(place.Value, frame.Settings, flash, darkest, map.Spread, parsed.GetValue(options.Target)),
            Compared = compared.Value,
        });
    }

    private ExitCode Finish(ParseResult parsed, LadderReport report)
    {
        options.WriteFiles(parsed, [("white-margin.svg", LadderDrawing.Svg(report.Map, report.Power, report.Compared))]);
        host.Output.WriteLine(parsed.GetValue(options.Json) ? JsonReport.Document(report.Write) : report.Lines());
        return ExitCode.Done;
    }
}
