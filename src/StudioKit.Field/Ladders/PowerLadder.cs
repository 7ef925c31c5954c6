using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Ladders;

/// <summary>Finds from three or more frames of the bare panel the power at which every cell of the frame clips.</summary>
/// <remarks>
/// Light on the sensor is proportional to the power, so a cell seen d stops under clipping at power P clips at P·2^d. Each frame that shows
/// the cell unclipped gives one estimate, and the nearer to clipping the more it counts. A camera's tone curve may differ from the standard one;
/// the ladder itself shows how (<see cref="ToneCurveFit"/>), and d is read by the curve so learnt.
/// </remarks>
public static class PowerLadder
{
    /// <summary>Fewest frames that a ladder needs [1].</summary>
    public const int FewestFrames = 3;

    // Above it part of a cell's pixels already clip by noise alone and its mean no longer follows the light.
    private const double HighestLight = 0.85;
    private const double LowestLight = 0.004;

    /// <summary>Measures the white margin map.</summary>
    /// <param name="frames">Frames of the bare panel, in any order, read by the standard tone curve.</param>
    /// <param name="kept">Tone curve that is known of the camera, for a ladder that shows too little to learn one; the standard one where there is none.</param>
    /// <returns>The map, or why there is none.</returns>
    /// <exception cref="ArgumentNullException">There are no frames.</exception>
    [Source("Derived", "flash light proportional to power")]
    public static FieldResult<MeasuredMarginMap> Measure(IReadOnlyList<LadderFrame> frames, ToneCurve? kept = null)
    {
        ArgumentNullException.ThrowIfNull(frames);
        var faults = Faults(frames).ToList();
        if (faults.Count > 0)
        {
            return FieldResult<MeasuredMarginMap>.Refused(faults);
        }

        var rungs = frames.OrderByDescending(frame => frame.Power.StopsBelowFull).ToList();
        var learnt = ToneCurveFit.Of(rungs);
        var curve = learnt ?? kept ?? ToneCurve.Standard;
        var first = rungs[0].Analysis;
        var cells = Enumerable.Range(0, first.Cells.Count).Select(cell => Locate(rungs, cell, curve)).ToList();
        return new MeasuredMarginMap(first.CellColumns, first.CellRows, cells, LadderOrder.Slope(rungs), [.. Caveats(cells, curve, learnt is not null)])
        {
            Curve = curve,
            IsCurveLearnt = learnt is not null,
        };
    }

    private static IEnumerable<FieldDiagnostic> Faults(IReadOnlyList<LadderFrame> frames)
    {
        if (frames.Select(frame => frame.Power).Distinct().Count() < FewestFrames)
        {
            yield return new FieldDiagnostic(
                "FLD101", "power ladder", $"A ladder needs frames at {FewestFrames} different powers or more.", $"It got {frames.Count} frame{(frames.Count == 1 ? "" : "s")} of {Powers(frames)}.");
        }

        foreach (var frame in frames.Skip(1))
        {
            var (a, b) = (frames[0].Analysis, frame.Analysis);
            if (a.Width != b.Width || a.Height != b.Height)
            {
                yield return new FieldDiagnostic("FLD102", b.Path, $"It is {b.Width} x {b.Height} pixels, the first frame {a.Width} x {a.Height}.");
            }

            if (Differ(a.Settings.Iso?.Value, b.Settings.Iso?.Value) || Differ(a.Settings.Aperture?.Value, b.Settings.Aperture?.Value))
            {
                yield return new FieldDiagnostic(
                    "FLD103", b.Path, "Its ISO speed or f-number differs from the first frame's.", "Change nothing but the power along a ladder.");
            }
        }

        if (frames.Select(frame => frame.Analysis.Cells.Count).Distinct().Count() == 1 && LadderOrder.Fault(frames) is { } order)
        {
            yield return order;
        }
    }

    private static string Powers(IReadOnlyList<LadderFrame> frames) =>
        frames.Select(frame => frame.Power).Distinct().Count() is var count && count == 1 ? "one power" : $"{count} powers";

    private static bool Differ(double? a, double? b) => a is { } x && b is { } y && Math.Abs(Math.Log2(x / y)) > 0.05;

    private static bool IsUsable(FrameCell cell) => cell.FollowsLight(LowestLight, HighestLight);

    private static LadderCell Locate(List<LadderFrame> rungs, int index, ToneCurve curve)
    {
        var (seen, dark) = (new List<(double Depth, double Clips, double Weight)>(), true);
        double? lowestWhite = null;
        foreach (var rung in rungs)
        {
            var cell = rung.Analysis.Cells[index];
            if (IsUsable(cell))
            {
                var depth = curve.StopsUnder(-Math.Log2(cell.Light));
                seen.Add((depth, depth - rung.Power.StopsBelowFull, 1 / Math.Pow(Uncertainty(depth), 2)));
            }

            dark &= cell.Light <= LowestLight;
            lowestWhite ??= cell.ClippedShare > 0.5 ? -rung.Power.StopsBelowFull : null;
        }

        return (seen.Count, lowestWhite) switch
        {
            ( > 0, _) => Seen(seen, lowestWhite is null ? LadderCellKind.Extrapolated : LadderCellKind.Bracketed),
            (_, { } power) => new LadderCell(LadderCellKind.AtMost, power, double.PositiveInfinity),
            _ when !dark => new LadderCell(LadderCellKind.Bracketed, -rungs[0].Power.StopsBelowFull, 0.2),
            _ => new LadderCell(LadderCellKind.Unknown, double.NaN, double.PositiveInfinity),
        };
    }

    // The weighted mean of what the rungs say, and how far they scatter about it.
    [Source("NistHandbook", "section 4.4.3.2, weighted least squares, of a constant")]
    private static LadderCell Seen(List<(double Depth, double Clips, double Weight)> rungs, LadderCellKind kind)
    {
        var weights = rungs.Sum(rung => rung.Weight);
        var clips = rungs.Sum(rung => rung.Weight * rung.Clips) / weights;
        var left = rungs.Sum(rung => rung.Weight * Math.Pow(rung.Clips - clips, 2));
        return new LadderCell(kind, clips, 1 / Math.Sqrt(weights))
        {
            ScatterStops = rungs.Count > 1 ? Math.Sqrt(left / (rungs.Count - 1) / weights) : 0,
            DepthStops = rungs.Sum(rung => rung.Weight * rung.Depth) / weights,
            NearestStops = rungs.Min(rung => rung.Depth),
        };
    }

    // Common experience with in-camera pictures: a fiftieth of a stop near clipping, and a twentieth more for every stop further down.
    private static double Uncertainty(double depthStops) => 0.02 + (0.05 * depthStops);

    private static IEnumerable<string> Caveats(List<LadderCell> cells, ToneCurve curve, bool isLearnt)
    {
        yield return (isLearnt, curve.IsStandard) switch
        {
            (true, true) => "The ladder fits the standard tone curve.",
            (true, false) => FormattableString.Invariant($"The camera's tone curve is not the standard one, which is off by up to {Math.Abs(curve.MostOff.Stops):0.0} stop, {curve.MostOff.At:0.0} stops under clipping; the curve learnt from this ladder is used (± {curve.PlusMinus:0.00} stop)."),
            (false, true) => "Too little was seen under clipping to learn the camera's tone curve: the standard one is assumed.",
            _ => "Too little was seen under clipping to learn the camera's tone curve: the one kept for it is used.",
        };

        if (cells.Exists(cell => cell.Kind == LadderCellKind.AtMost))
        {
            yield return "Some cells are white in every frame: add a frame at lower power to see how far they are above clipping.";
        }

        if (cells.TrueForAll(cell => cell.Kind != LadderCellKind.Bracketed && cell.Kind != LadderCellKind.AtMost))
        {
            yield return "No frame reaches white anywhere: add frames at higher power.";
        }
    }
}
