using MathNet.Numerics.LinearAlgebra;
using StudioKit.Field.Analysis;
using StudioKit.Field.Pictures;
using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Ladders;

/// <summary>Learns a camera's tone curve from a power ladder: the powers say how many stops lie between two frames of the same place.</summary>
/// <remarks>
/// With T(s) the stops of light under clipping where the standard curve shows s, every place seen in two frames gives T(s₁) − T(s₂) = the stops
/// between their powers. T is straight between knots, so its steepness from knot to knot is found by least squares; where nothing was seen it stays
/// near the standard, and it is nowhere let fall. A shoulder shows because light falls off over the panel, so that the frames overlap.
/// </remarks>
public static class ToneCurveFit
{
    private static readonly double[] Knots = [0, 0.1, 0.25, 0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 7];

    // Common experience: a fiftieth of a stop of noise, three hundredths from flash to flash, and a curve that bends by a fifth from knot to knot.
    private const double Noise = 0.03;
    private const double Independent = 20;
    private const double NearStandard = 0.5;
    private const double Bend = 0.25;
    private const double LeastSteepness = 0.05;
    private const int FewestPairs = 24;

    // Nearer to clipping part of the pixels clip by noise alone; further down noise and rounding count more than light.
    private const double HighestLight = 0.97;
    private const double LowestLight = 0.01;

    // What is less off than this nobody can tell from how well flashes repeat.
    private const double LeastOff = 0.1;

    /// <summary>Learns the curve.</summary>
    /// <param name="frames">Frames of the bare panel, read by the standard curve.</param>
    /// <returns>The curve; the standard one where the ladder fits it; none where it shows too little.</returns>
    /// <exception cref="ArgumentNullException">There are no frames.</exception>
    [Source("Derived", "flash light proportional to power")]
    public static ToneCurve? Of(IReadOnlyList<LadderFrame> frames)
    {
        ArgumentNullException.ThrowIfNull(frames);
        var pairs = Pairs(frames).Where(pair => pair.Places.Count >= FewestPairs).ToList();
        if (pairs.Count == 0)
        {
            return null;
        }

        var steepness = Solve(pairs);
        var deepest = pairs.Max(pair => pair.Places.Max(place => place.Lower));
        ValueList<double> standard = [.. Knots.Where((knot, i) => i < 2 || Knots[i - 1] < deepest)];
        var light = standard.Select(knot => Span(knot).Zip(steepness, (span, steep) => span * steep).Sum()).ToList();
        var curve = new ToneCurve(standard, [.. light]) { Camera = frames[0].Analysis.Settings.Camera, PlusMinus = PlusMinus(pairs, steepness) };
        return Math.Abs(curve.MostOff.Stops) <= Math.Max(LeastOff, 2.5 * curve.PlusMinus) ? ToneCurve.Standard : curve;
    }

    private static IEnumerable<(double Stops, List<(double Lower, double Higher)> Places)> Pairs(IReadOnlyList<LadderFrame> frames) =>
        from low in frames
        from high in frames
        let stops = low.Power.StopsBelowFull - high.Power.StopsBelowFull
        where stops > 0.1
        select (stops, low.Analysis.Cells.Zip(high.Analysis.Cells).Where(pair => IsUsable(pair.First) && IsUsable(pair.Second))
            .Select(pair => (Lower: -Math.Log2(pair.First.Light), Higher: -Math.Log2(pair.Second.Light)))
            .Where(place => place.Lower < Knots[^1]).ToList());

    private static bool IsUsable(FrameCell cell) => cell.IsMostlyBackground && cell.FollowsLight(LowestLight, HighestLight);

    // Normal equations with what is expected beforehand; a steepness that comes out too small is held at the least, and the rest solved again.
    private static double[] Solve(List<(double Stops, List<(double Lower, double Higher)> Places)> pairs)
    {
        var count = Knots.Length - 1;
        var (matrix, right) = Beforehand(count);
        foreach (var (stops, places) in pairs)
        {
            var weight = Math.Min(1, Independent / places.Count) / (Noise * Noise);
            foreach (var (lower, higher) in places)
            {
                var row = Vector<double>.Build.DenseOfEnumerable(Span(lower).Zip(Span(higher), (a, b) => a - b));
                matrix += weight * row.OuterProduct(row);
                right += weight * stops * row;
            }
        }

        return Held(matrix, right);
    }

    private static (Matrix<double> Matrix, Vector<double> Right) Beforehand(int count)
    {
        var matrix = Matrix<double>.Build.DenseIdentity(count) / (NearStandard * NearStandard);
        var right = Vector<double>.Build.Dense(count, 1 / (NearStandard * NearStandard));
        for (var i = 1; i < count; i++)
        {
            var bend = Vector<double>.Build.Dense(count, k => k == i ? 1 : k == i - 1 ? -1 : 0);
            matrix += bend.OuterProduct(bend) / (Bend * Bend);
        }

        return (matrix, right);
    }

    private static double[] Held(Matrix<double> matrix, Vector<double> right)
    {
        var held = new bool[right.Count];
        while (true)
        {
            var (left, known) = (matrix.Clone(), right.Clone());
            for (var i = 0; i < held.Length; i++)
            {
                if (held[i])
                {
                    left.ClearRow(i);
                    left[i, i] = 1;
                    known[i] = LeastSteepness;
                }
            }

            var solved = left.Solve(known);
            var fallen = Enumerable.Range(0, held.Length).Where(i => !held[i] && solved[i] < LeastSteepness).ToList();
            if (fallen.Count == 0)
            {
                return [.. solved];
            }

            fallen.ForEach(i => held[i] = true);
        }
    }

    // How much of each step between knots lies above a depth.
    private static IEnumerable<double> Span(double depth) =>
        Enumerable.Range(1, Knots.Length - 1).Select(i => Math.Clamp(depth - Knots[i - 1], 0, Knots[i] - Knots[i - 1]));

    // What is left of each pair of frames on average: flashes that do not repeat, and bends between knots.
    private static double PlusMinus(List<(double Stops, List<(double Lower, double Higher)> Places)> pairs, double[] steepness) => Math.Max(
        Noise,
        Math.Sqrt(pairs.Average(pair => Math.Pow(
            pair.Places.Average(place => Span(place.Lower).Zip(Span(place.Higher), (a, b) => a - b).Zip(steepness, (span, steep) => span * steep).Sum()) - pair.Stops, 2))));
}
