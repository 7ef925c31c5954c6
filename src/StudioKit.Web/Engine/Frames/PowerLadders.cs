using System.Globalization;
using StudioKit.Field;
using StudioKit.Field.Advice;
using StudioKit.Field.Calibration;
using StudioKit.Field.Ladders;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Expected;
using StudioKit.Web.Engine.Telling;
using StudioKit.Web.Results;
using UnitsNet;

namespace StudioKit.Web.Engine.Frames;

/// <summary>What power ladders measure, and the corrections that follow.</summary>
/// <param name="plans">Where plans come from.</param>
/// <param name="pictures">The pictures that were read.</param>
internal sealed class PowerLadders(PlannedKits plans, ReadPictures pictures)
{
    /// <summary>Tells of a ladder.</summary>
    public LadderAnswer Of(LadderRequest request)
    {
        var frames = request.Rungs.Select(rung => pictures.Of(rung.Picture)).ToList();
        if (frames.SelectMany(frame => frame.Diagnostics).ToList() is { Count: > 0 } lost)
        {
            return Nothing(lost);
        }

        if (plans.Of(request.Text, request.FileName).Plan is not { } plan)
        {
            return new LadderAnswer("", [], "", ["The kit's text cannot be read: put that right first."]);
        }

        var rungs = LadderPowers.AsNamed([.. frames.Select(frame => frame.Value!)], [.. request.Rungs.Select(rung => rung.Power)]);
        if (!rungs.IsSound)
        {
            return Nothing(rungs.Diagnostics);
        }

        var map = PowerLadder.Measure(rungs.Value);
        return map.IsSound ? Of(request, Part(request, plan), rungs.Value, map.Value) : Nothing(map.Diagnostics);
    }

    private LadderAnswer Of(LadderRequest request, TestFramePlan part, IReadOnlyList<LadderFrame> rungs, MeasuredMarginMap map)
    {
        var frame = rungs[0].Analysis;
        var place = part.ViewOf(frame);
        if (!place.IsSound)
        {
            return Nothing(place.Diagnostics);
        }

        var flash = part.FlashAt(place.Value, default, TestFrames.Nearest);
        var compared = MarginComparison.Of(map, frame, place.Value, flash, part.Expected);
        if (!compared.IsSound)
        {
            return Nothing(compared.Diagnostics);
        }

        var darkest = map.DarkestAt(flash.Power) is { IsLeast: false } seen ? new Stops(seen.Stops) : (Stops?)null;
        var told = LadderTelling.Of(map, flash.Mark, part.Advice(place.Value, frame.Settings, flash, darkest, map.Spread, null), compared.Value);
        return WithCorrection(told, request, part.Plan, rungs, map);
    }

    // Readings are held against the kit as written, since a correction takes the place of the one before.
    private LadderAnswer WithCorrection(LadderAnswer told, LadderRequest request, Plan plan, IReadOnlyList<LadderFrame> rungs, MeasuredMarginMap map)
    {
        var (read, asWritten) = plans.AsWritten(request.Text, request.FileName);
        var day = DateOnly.ParseExact(request.Day, "yyyy-MM-dd", CultureInfo.InvariantCulture);
        var made = LadderCalibration.Of(read, Part(request, asWritten!), rungs, map, null, day);
        if (!made.IsSound)
        {
            return told with { CorrectionLines = PictureTelling.Faults(made.Diagnostics) };
        }

        var text = KitCorrectionFile.Write(made.Value.Correction);
        var cards = CardPowerChange.Between(plan, plans.PlanOf(made.Value.Correction.ApplyTo(read, text)));
        return told with
        {
            Correction = text,
            CorrectionFile = KitCorrectionFile.PathBeside(request.FileName),
            CorrectionLines = CorrectionTelling.Lines(read.Kit!, made.Value, cards),
        };
    }

    private static TestFramePlan Part(LadderRequest request, Plan plan) =>
        new(plan, new ExpectedLight(plan), request.SetUp, request.Framing, Angle.FromDegrees(request.PitchDegrees));

    private static LadderAnswer Nothing(IReadOnlyList<FieldDiagnostic> faults) => new("", [], "", PictureTelling.Faults(faults));
}
