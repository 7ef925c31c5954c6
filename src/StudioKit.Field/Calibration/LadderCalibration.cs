using StudioKit.Field.Advice;
using StudioKit.Field.Analysis;
using StudioKit.Field.Ladders;
using StudioKit.Field.Pictures;
using StudioKit.Kits;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Field.Calibration;

/// <summary>Makes a correction of a kit from the frames of a power ladder: each that shows the panel under clipping is a reading.</summary>
public static class LadderCalibration
{
    private const string SaysNothing = "FLD221";

    /// <summary>Makes the correction.</summary>
    /// <param name="read">The kit as written, without any correction.</param>
    /// <param name="plan">Its plan, and which part of it the frames show.</param>
    /// <param name="rungs">The frames, read by the standard tone curve.</param>
    /// <param name="map">What the ladder measured.</param>
    /// <param name="distance">Lower flash to panel where it was not as planned.</param>
    /// <param name="day">Day of frames that do not name their own.</param>
    /// <returns>The correction and what it was made of, or why there is none.</returns>
    public static FieldResult<LadderCorrection> Of(
        KitReadResult read, TestFramePlan plan, IReadOnlyList<LadderFrame> rungs, MeasuredMarginMap map, Length? distance, DateOnly day)
    {
        ArgumentNullException.ThrowIfNull(read);
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(rungs);
        ArgumentNullException.ThrowIfNull(map);
        var readings = rungs.Select(rung => Reading(plan, rung, map.Curve, distance)).ToList();
        var faults = readings.SelectMany(reading => reading.Diagnostics).ToList();
        if (faults.Exists(fault => fault.Code != SaysNothing) || !readings.Exists(reading => reading.IsSound))
        {
            return FieldResult<LadderCorrection>.Refused(faults);
        }

        var solved = KitCalibration.Solve([.. readings.Select(reading => reading.Value).OfType<CalibrationReading>()], CalibrationPrior.Of(read));
        if (!solved.IsSound)
        {
            return FieldResult<LadderCorrection>.Refused(solved.Diagnostics);
        }

        var date = rungs.Select(rung => rung.Analysis.Settings.TakenLocal is { } taken ? DateOnly.FromDateTime(taken) : day).Max();
        return new LadderCorrection(KitCorrection.From(read.Kit!, solved.Value, date) with { ToneCurve = map.IsCurveLearnt ? map.Curve : null }, solved.Value);
    }

    private static FieldResult<CalibrationReading> Reading(TestFramePlan plan, LadderFrame rung, ToneCurve curve, Length? distance)
    {
        var place = plan.ViewOf(rung.Analysis);
        return place.IsSound
            ? FrameReading.Of(ReadBy(rung.Analysis, curve), place.Value, new ShotSettings(rung.Power, distance), plan.Expected)
            : FieldResult<CalibrationReading>.Refused(place.Diagnostics);
    }

    // A cell is small enough for its mean to stand for all of it, as in the ladder itself.
    private static FrameAnalysis ReadBy(FrameAnalysis frame, ToneCurve curve) => curve.IsStandard
        ? frame
        : frame with { Curve = curve, Cells = [.. frame.Cells.Select(cell => cell.Light is > 0 and <= 1 ? cell with { Light = Math.Pow(2, -curve.StopsUnder(-Math.Log2(cell.Light))) } : cell)] };
}
