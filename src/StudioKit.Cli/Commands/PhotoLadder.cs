using System.CommandLine;
using StudioKit.Cli.Files;
using StudioKit.Cli.Tables;
using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Field.Ladders;
using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Sheets.Json;

namespace StudioKit.Cli.Commands;

/// <summary>The power ladder of <c>studiokit photo</c>: the measured map, beside the plan's where there is one.</summary>
internal sealed class PhotoLadder(CommandHost host, PhotoOptions options)
{
    /// <summary>Measures and prints.</summary>
    public ExitCode Run(ParseResult parsed, List<FrameAnalysis> frames, string[] powers, PhotoPlan? plan)
    {
        if (powers.Length != frames.Count)
        {
            host.Error.WriteLine($"studiokit: {frames.Count} frames but {powers.Length} powers; name one --ladder for each frame, in the same order.");
            return ExitCode.BadInput;
        }

        var rungs = new List<LadderFrame>();
        foreach (var (frame, text) in frames.Zip(powers))
        {
            if (!QuantityText.TryPower(text, out var power, out var problem))
            {
                host.Error.WriteLine($"studiokit: --ladder: {problem}");
                return ExitCode.BadInput;
            }

            rungs.Add(new LadderFrame(ThirdStopSeries.FromMark(power), frame));
        }

        var measured = PowerLadder.Measure(rungs);
        if (!measured.IsSound)
        {
            return FieldFaults.Print(host, measured.Diagnostics);
        }

        var highest = rungs.MaxBy(rung => rung.Power.Fraction)!.Power;
        return plan is null ? Print(parsed, measured.Value, highest) : Compare(parsed, measured.Value, frames[0], plan);
    }

    private ExitCode Print(ParseResult parsed, MeasuredMarginMap map, FlashPower highest)
    {
        var flash = options.Beneath(parsed) ?? options.BeneathUnmoved(parsed, highest);
        var advice = TestFrameAdvice.After(map, flash, options.TargetOf(parsed, null));
        options.WriteFiles(parsed, [("white-margin.svg", LadderDrawing.Svg(map, flash.Mark, null))]);
        host.Output.WriteLine(parsed.GetValue(options.Json)
            ? JsonReport.Document(json => LadderReport.Write(json, map, flash.Mark, advice, null))
            : LadderReport.Lines(map, flash.Mark, advice, null));
        return ExitCode.Done;
    }

    private ExitCode Compare(ParseResult parsed, MeasuredMarginMap map, FrameAnalysis frame, PhotoPlan plan)
    {
        var place = plan.ViewOf(frame);
        if (!place.IsSound)
        {
            return FieldFaults.Print(host, place.Diagnostics);
        }

        if (plan.FlashAt(place.Value, options.Shot(parsed), parsed.GetValue(options.Nearest)) is not { } flash)
        {
            return options.NoPower();
        }

        var compared = MarginComparison.Of(map, frame, place.Value, flash, plan.Expected);
        if (!compared.IsSound)
        {
            return FieldFaults.Print(host, compared.Diagnostics);
        }

        var advice = TestFrameAdvice.After(map, flash, options.TargetOf(parsed, place.Value.SetUp));
        options.WriteFiles(parsed, [("white-margin.svg", LadderDrawing.Svg(map, flash.Mark, compared.Value))]);
        host.Output.WriteLine(parsed.GetValue(options.Json)
            ? JsonReport.Document(json => LadderReport.Write(json, map, flash.Mark, advice, compared.Value))
            : LadderReport.Lines(map, flash.Mark, advice, compared.Value));
        return ExitCode.Done;
    }
}
