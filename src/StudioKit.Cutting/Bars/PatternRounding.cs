using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Whole plans from a relaxed one: whole parts are kept, the rest is filled in greedily.</summary>
internal static class PatternRounding
{
    // How much of a bar must be used in the relaxed plan for it to be taken whole.
    private static readonly double[] Thresholds = [0.999_999, 0.8, 0.6, 0.5, 0.3];

    public static IEnumerable<List<BarPattern>> Plans(BarJob job, IReadOnlyList<(BarPattern Pattern, double Times)> relaxed) =>
        Thresholds.Select(threshold => Filled(job, Whole(job, relaxed, threshold)));

    private static List<BarPattern> Whole(BarJob job, IReadOnlyList<(BarPattern Pattern, double Times)> relaxed, double threshold)
    {
        var left = job.Stock.Select(bar => bar.Available).ToArray();
        var missing = job.Demand.ToArray();
        var bars = new List<BarPattern>();
        foreach (var (pattern, times) in relaxed.OrderByDescending(column => column.Times - Math.Floor(column.Times)))
        {
            var whole = (int)Math.Floor(times + 1 - threshold);
            for (var n = 0; n < whole && left[pattern.Stock] > 0 && Helps(pattern, missing); n++)
            {
                left[pattern.Stock]--;
                bars.Add(pattern);
                for (var i = 0; i < missing.Length; i++)
                {
                    missing[i] -= pattern.Counts[i];
                }
            }
        }

        return bars;
    }

    /// <summary>Whether every piece of the pattern is still wanted.</summary>
    private static bool Helps(BarPattern pattern, int[] missing)
    {
        for (var i = 0; i < missing.Length; i++)
        {
            if (pattern.Counts[i] > missing[i])
            {
                return false;
            }
        }

        return true;
    }

    /// <summary>Cuts what is missing as a small job of its own.</summary>
    private static List<BarPattern> Filled(BarJob job, List<BarPattern> bars)
    {
        var missing = job.Demand.Select((count, i) => Math.Max(0, count - bars.Sum(bar => bar.Counts[i]))).ToArray();
        var left = job.Stock.Select((bar, j) => bar.Available - bars.Count(taken => taken.Stock == j)).ToArray();
        return [.. bars, .. FirstFitDecreasing.Best(job.Rest(missing, left))];
    }
}
