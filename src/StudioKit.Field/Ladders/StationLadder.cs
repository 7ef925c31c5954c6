using StudioKit.Field.Advice;
using StudioKit.Field.Pictures;
using StudioKit.Physics.Exposure;
using StudioKit.Planning;
using StudioKit.Planning.Stations.OneWhite;
using UnitsNet;

namespace StudioKit.Field.Ladders;

/// <summary>Makes of a power ladder what it tells of a station's white.</summary>
public static class StationLadder
{
    // The sides of a frame are whole pixels of a sensor's: they differ by less.
    private const double SameShape = 0.03;

    /// <summary>What the ladder tells.</summary>
    /// <param name="ladder">Name of the ladder, for whoever has to put it right.</param>
    /// <param name="plan">Plan of the station, and which part of it the frames show.</param>
    /// <param name="rungs">The frames, read by the standard tone curve.</param>
    /// <param name="kept">Tone curve that is known of the camera; none where none was learnt.</param>
    /// <returns>The measured station, or why the ladder does not tell of it.</returns>
    public static FieldResult<MeasuredStation> Of(string ladder, TestFramePlan plan, IReadOnlyList<LadderFrame> rungs, ToneCurve? kept)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(rungs);
        var map = PowerLadder.Measure(rungs, kept);
        if (!map.IsSound)
        {
            return FieldResult<MeasuredStation>.Refused([.. map.Diagnostics.Select(fault => fault with { Subject = fault.Subject == "power ladder" ? ladder : fault.Subject })]);
        }

        var place = plan.ViewOf(rungs[0].Analysis);
        if (!place.IsSound)
        {
            return FieldResult<MeasuredStation>.Refused(place.Diagnostics);
        }

        var others = Others(plan, plan.ExposureAt(place.Value).Framing, rungs).ToList();
        return others.Count > 0 ? FieldResult<MeasuredStation>.Refused(others)
            : NotSeen(ladder, map.Value) is { } unseen ? unseen
            : Station(ladder, plan, place.Value, rungs.MaxBy(rung => rung.Power.Fraction)!, map.Value);
    }

    // What the files themselves say against it.
    private static IEnumerable<FieldDiagnostic> Others(TestFramePlan plan, FramingPlan framing, IReadOnlyList<LadderFrame> rungs)
    {
        var camera = plan.Plan.Kit.Camera;
        foreach (var frame in rungs.Select(rung => rung.Analysis))
        {
            if (frame.Settings.FocalLength is { } focal && !new PlanSearch(plan.Plan, frame.Path).Fits(framing, focal))
            {
                yield return new FieldDiagnostic(
                    "FLD232", frame.Path, FormattableString.Invariant($"It was taken at a focal length of {focal.Millimeters:0.#} mm, which is not that of '{framing.Name}'."), "It is of another framing or of another kit.");
            }

            if (Math.Abs((Shape(frame.Width, frame.Height) / Shape(camera.SensorWidth.Millimeters, camera.SensorHeight.Millimeters)) - 1) > SameShape)
            {
                yield return new FieldDiagnostic(
                    "FLD233", frame.Path, $"It is {frame.Width} x {frame.Height} pixels, which is not the shape of the kit's sensor.", "It is another camera's, or was cropped; the corners are what counts, so take it whole.");
            }
        }
    }

    private static double Shape(double one, double other) => Math.Max(one, other) / Math.Min(one, other);

    private static FieldDiagnostic? NotSeen(string ladder, MeasuredMarginMap map) => map switch
    {
        { Cells: var cells } when cells.Any(cell => cell.Kind == LadderCellKind.Unknown) => new FieldDiagnostic(
            "FLD234", ladder, "Part of the frame is black in every picture, so nobody knows how dark the darkest place is.", "Add frames at higher power."),
        { DarkestUncertainty: null } => new FieldDiagnostic("FLD234", ladder, "The darkest place is white in every picture, which only says that there is light enough.", "Add frames at lower power."),
        _ => null,
    };

    private static FieldResult<MeasuredStation> Station(string ladder, TestFramePlan plan, PlanPlace place, LadderFrame highest, MeasuredMarginMap map)
    {
        var (frame, exposure) = (highest.Analysis, plan.ExposureAt(place));
        var flash = plan.FlashAt(place, (highest.Power, null), Length.Zero);
        var compared = MarginComparison.Of(map, frame, place, flash, plan.Expected);
        var tested = (plan with { Pitch = place.Pitch }).Tested(place, frame.Settings, flash, new Stops(map.DarkestAt(highest.Power)!.Value.Stops)) with { Spread = map.Spread };
        if (!compared.IsSound || plan.Plan.Advice.Measured(exposure, tested) is not { } light)
        {
            return new FieldDiagnostic("FLD209", ladder, "The plan has no light map for this: its geometry is impossible, or the frame misses the panel.") { Help = FieldHelp.Plan };
        }

        return light.IsSetOtherwise
            ? new FieldDiagnostic(
                "FLD235", ladder, FormattableString.Invariant($"It lies {light.Gives.Value:+0.0;-0.0} stops from what the plan expects at '{exposure.Framing.Name}'; no kit's figures are so wrong."),
                "Is it of another framing or of another kit, or was power, distance, f-number or ISO speed otherwise than named?")
            : new MeasuredStation
            {
                Plan = plan.Plan,
                Exposure = exposure,
                Pitch = place.Pitch,
                Frame = tested,
                Uncertainty = map.DarkestUncertainty!.Value,
                OtherShape = new Stops(double.IsFinite(compared.Value.SpreadStops) ? compared.Value.SpreadStops : 0),
            };
    }
}
