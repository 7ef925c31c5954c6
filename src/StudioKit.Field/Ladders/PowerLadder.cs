using StudioKit.Field.Analysis;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Ladders;

/// <summary>Finds from three or more frames of the bare panel the power at which every cell of the frame clips.</summary>
/// <remarks>
/// Light on the sensor is proportional to the power, so a cell seen d stops under clipping at power P clips at P·2^d. Each frame that shows
/// the cell unclipped gives one estimate, and the nearer to clipping the more it counts. A camera's tone curve may be steeper or flatter than
/// the standard one; the ladder itself shows by how much (stops seen for stops of power), and d is divided by it.
/// </remarks>
public static class PowerLadder
{
    /// <summary>Fewest frames that a ladder needs [1].</summary>
    public const int FewestFrames = 3;

    // Above it part of a cell's pixels already clip by noise alone and its mean no longer follows the light.
    private const double HighestLight = 0.85;
    private const double LowestLight = 0.004;
    private const double LowestForSlope = 0.08;
    private const double MostClipped = 0.002;

    /// <summary>Measures the white margin map.</summary>
    /// <param name="frames">Frames of the bare panel, in any order.</param>
    /// <returns>The map, or why there is none.</returns>
    /// <exception cref="ArgumentNullException">There are no frames.</exception>
    [Source("Derived", "flash light proportional to power")]
    public static FieldResult<MeasuredMarginMap> Measure(IReadOnlyList<LadderFrame> frames)
    {
        ArgumentNullException.ThrowIfNull(frames);
        var faults = Faults(frames).ToList();
        if (faults.Count > 0)
        {
            return FieldResult<MeasuredMarginMap>.Refused(faults);
        }

        var rungs = frames.OrderByDescending(frame => frame.Power.StopsBelowFull).ToList();
        var slope = Slope(rungs);
        var first = rungs[0].Analysis;
        var cells = Enumerable.Range(0, first.Cells.Count).Select(cell => Locate(rungs, cell, slope)).ToList();
        return new MeasuredMarginMap(first.CellColumns, first.CellRows, cells, slope, [.. Caveats(cells, slope)]);
    }

    private static IEnumerable<FieldDiagnostic> Faults(IReadOnlyList<LadderFrame> frames)
    {
        if (frames.Select(frame => frame.Power).Distinct().Count() < FewestFrames)
        {
            yield return new FieldDiagnostic(
                "FLD101", "power ladder", $"A ladder needs frames at {FewestFrames} different powers or more.", $"It got {frames.Count} frames.");
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
    }

    private static bool Differ(double? a, double? b) => a is { } x && b is { } y && Math.Abs(Math.Log2(x / y)) > 0.05;

    private static bool IsUsable(FrameCell cell) =>
        cell.Light is > LowestLight and < HighestLight && cell.ClippedShare < MostClipped;

    private static double Slope(List<LadderFrame> rungs)
    {
        var slopes = new List<double>();
        foreach (var (low, high) in rungs.Zip(rungs.Skip(1)).Where(pair => pair.First.Power != pair.Second.Power))
        {
            var step = low.Power.StopsBelowFull - high.Power.StopsBelowFull;
            slopes.AddRange(low.Analysis.Cells.Zip(high.Analysis.Cells)
                .Where(pair => IsUsable(pair.First) && IsUsable(pair.Second) && pair.First.Light > LowestForSlope)
                .Select(pair => Math.Log2(pair.Second.Light / pair.First.Light) / step));
        }

        slopes.Sort();
        return slopes.Count < 8 ? 1 : Math.Clamp(slopes[slopes.Count / 2], 0.5, 2);
    }

    private static LadderCell Locate(List<LadderFrame> rungs, int index, double slope)
    {
        var (weights, sum, dark) = (0.0, 0.0, true);
        double? lowestWhite = null;
        foreach (var rung in rungs)
        {
            var cell = rung.Analysis.Cells[index];
            if (IsUsable(cell))
            {
                var depth = -Math.Log2(cell.Light) / slope;
                var weight = 1 / Math.Pow(Uncertainty(depth), 2);
                weights += weight;
                sum += weight * (depth - rung.Power.StopsBelowFull);
            }

            dark &= cell.Light <= LowestLight;
            lowestWhite ??= cell.ClippedShare > 0.5 ? -rung.Power.StopsBelowFull : null;
        }

        return (weights, lowestWhite) switch
        {
            ( > 0, _) => new LadderCell(
                lowestWhite is null ? LadderCellKind.Extrapolated : LadderCellKind.Bracketed, sum / weights, 1 / Math.Sqrt(weights)),
            (_, { } power) => new LadderCell(LadderCellKind.AtMost, power, double.PositiveInfinity),
            _ when !dark => new LadderCell(LadderCellKind.Bracketed, -rungs[0].Power.StopsBelowFull, 0.2),
            _ => new LadderCell(LadderCellKind.Unknown, double.NaN, double.PositiveInfinity),
        };
    }

    // Common experience with in-camera pictures: a fiftieth of a stop near clipping, and a twentieth more for every stop further down.
    private static double Uncertainty(double depthStops) => 0.02 + (0.05 * depthStops);

    private static IEnumerable<string> Caveats(List<LadderCell> cells, double slope)
    {
        if (Math.Abs(slope - 1) > 0.1)
        {
            yield return FormattableString.Invariant($"The camera's tone curve is not the standard one: a stop of power shows as {slope:0.00} stops.");
        }

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
