using StudioKit.Field.Analysis;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Ladders;

/// <summary>Whether the frames of a ladder brighten as the powers named for them say.</summary>
internal static class LadderOrder
{
    // A tone curve is steeper or flatter than the standard one by a fifth, one standard deviation (common practice, no source), in its shoulder by two fifths.
    private const double CurveDoubt = 0.2;
    private const double ShoulderDoubt = 0.4;
    private const double UnderShoulder = 1.5;

    // Flashes repeat to a twentieth of a stop.
    private const double FlashDoubt = 0.05;
    private const double Deviations = 2.5;
    private const int FewestCells = 8;

    // So little brightening is none.
    private const double Flat = 0.1;

    // A twelfth of a stop, and a fiftieth of the frame: what noise and dust do not make.
    private const double Brighter = 1.0 / 12;
    private const double OfFrame = 0.02;

    /// <summary>Stops that the frames brighten for a stop of power, under the shoulder where that was seen [1]; 1 where nothing tells.</summary>
    public static double Slope(IReadOnlyList<LadderFrame> frames) => Steepness(frames) is { } seen ? seen.Slope : 1;

    /// <summary>What is wrong with the order or the powers, and what would fit; none where they can be right.</summary>
    [Source("Derived", "flash light proportional to power")]
    public static FieldDiagnostic? Fault(IReadOnlyList<LadderFrame> frames)
    {
        var pairs = (from low in frames from high in frames where high.Power.StopsBelowFull < low.Power.StopsBelowFull - 0.1 select Compared(low, high)).ToList();
        var (wrong, right) = (pairs.Count(order => order < 0), pairs.Count(order => order > 0));
        if (wrong > 0)
        {
            return new FieldDiagnostic(
                "FLD104",
                "power ladder",
                right == 0 ? "The frames darken as the powers named for them rise: their order is reversed." : "The frames do not brighten in the order of the powers named for them.",
                $"By their brightness this would fit: {Fitting(frames)}. No advice is given from it as it stands.");
        }

        return Steepness(frames) is { } seen && IsWrong(seen) ? WrongPowers(frames, seen) : WrongStep(frames);
    }

    private static bool IsWrong((double Slope, double Doubt) seen) => Math.Abs(Math.Log(seen.Slope)) > Deviations * seen.Doubt;

    private static FieldDiagnostic WrongPowers(IReadOnlyList<LadderFrame> frames, (double Slope, double Doubt) seen) => new(
        "FLD105",
        "power ladder",
        $"A stop of power shows as {Explained(seen)}: the powers named are wrong.",
        seen.Slope < Flat ? "Was the power turned at all, and was there no other light? No advice is given from it as it stands." : $"By their brightness this would fit: {Refitted(frames, seen.Slope)}. No advice is given from it as it stands.");

    // Two wrong steps can make up for each other over the whole ladder.
    private static FieldDiagnostic? WrongStep(IReadOnlyList<LadderFrame> frames) => Rungs(frames).Zip(Rungs(frames).Skip(1))
        .Where(pair => Steepness([pair.First, pair.Second]) is { } seen && IsWrong(seen))
        .Select(pair => new FieldDiagnostic(
            "FLD108",
            "power ladder",
            $"From {Named(pair.First)} to {Named(pair.Second)} a stop of power shows as {Explained(Steepness([pair.First, pair.Second])!.Value)}: one of the two powers is wrong.",
            "No advice is given from it as it stands; leave that frame out, or take it again."))
        .FirstOrDefault();

    private static string Named(LadderFrame frame) => $"{Path.GetFileName(frame.Analysis.Path)} at {frame.Power.Nominal}";

    private static string Explained((double Slope, double Doubt) seen) => FormattableString.Invariant(
        $"{seen.Slope:0.0} stops, where a tone curve explains {Math.Exp(-Deviations * seen.Doubt):0.0} to {Math.Exp(Deviations * seen.Doubt):0.0}");

    // 1 where the frame at the higher power is brighter, −1 where it is darker, 0 where both are white or black alike.
    private static int Compared(LadderFrame low, LadderFrame high)
    {
        var (up, down) = (0, 0);
        foreach (var (darker, brighter) in low.Analysis.Cells.Zip(high.Analysis.Cells))
        {
            var stops = Level(brighter) - Level(darker);
            up += stops > Brighter ? 1 : 0;
            down += stops < -Brighter ? 1 : 0;
        }

        return Math.Max(up, down) < OfFrame * low.Analysis.Cells.Count ? 0 : up.CompareTo(down);
    }

    private static double Level(FrameCell cell) => cell.ClippedShare > 0.5 ? 0 : Math.Log2(Math.Clamp(cell.Light, 1.0 / 1024, 1));

    // One slope for each pair of neighbours in power; the ends of the ladder count as far as they lie apart.
    private static (double Slope, double Doubt)? Steepness(IReadOnlyList<LadderFrame> frames)
    {
        var rungs = Rungs(frames);
        return Steepness(rungs, UnderShoulder, CurveDoubt) ?? Steepness(rungs, 0.05, ShoulderDoubt);
    }

    private static List<LadderFrame> Rungs(IReadOnlyList<LadderFrame> frames) => [.. frames.OrderByDescending(frame => frame.Power.StopsBelowFull)];

    private static (double Slope, double Doubt)? Steepness(List<LadderFrame> rungs, double under, double curve)
    {
        var (seen, named) = (0.0, 0.0);
        foreach (var (low, high) in rungs.Zip(rungs.Skip(1)))
        {
            var step = low.Power.StopsBelowFull - high.Power.StopsBelowFull;
            var stops = low.Analysis.Cells.Zip(high.Analysis.Cells)
                .Where(pair => IsSeen(pair.First, under) && IsSeen(pair.Second, under))
                .Select(pair => Level(pair.Second) - Level(pair.First)).Order().ToList();
            if (stops.Count >= FewestCells && step > 0.1)
            {
                (seen, named) = (seen + stops[stops.Count / 2], named + step);
            }
        }

        return named == 0 ? null : (Math.Max(0, seen) / named, Math.Sqrt((curve * curve) + (2 * FlashDoubt * FlashDoubt / (named * named))));
    }

    private static bool IsSeen(FrameCell cell, double under) => cell.ClippedShare < 0.002 && cell.Light < Math.Pow(2, -under) && cell.Light > 0.004;

    private static string Fitting(IReadOnlyList<LadderFrame> frames) => string.Join(", ", frames.OrderBy(frame => frame.Analysis.Cells.Average(Level))
        .Zip(frames.Select(frame => frame.Power).OrderByDescending(power => power.StopsBelowFull), (frame, power) => $"{Path.GetFileName(frame.Analysis.Path)} {power.Nominal}"));

    // The brightest frame is taken at its word, the others so many stops below as they show.
    private static string Refitted(IReadOnlyList<LadderFrame> frames, double slope)
    {
        var highest = frames.MinBy(frame => frame.Power.StopsBelowFull)!.Power.StopsBelowFull;
        return string.Join(", ", frames.OrderByDescending(frame => frame.Power.StopsBelowFull)
            .Select(frame => $"{Path.GetFileName(frame.Analysis.Path)} {FlashPower.FromStopsBelowFull(highest + ((frame.Power.StopsBelowFull - highest) * slope)).Nominal}"));
    }
}
