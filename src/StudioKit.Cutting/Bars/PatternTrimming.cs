using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Takes pieces that nobody asked for out of a plan that covers its job more than fully.</summary>
internal static class PatternTrimming
{
    public static List<BarPattern> Exact(BarJob job, IReadOnlyList<BarPattern> bars)
    {
        var plan = bars.Select(bar => new BarPattern(bar.Stock, [.. bar.Counts])).ToList();
        var seldom = plan.OrderBy(bar => plan.Count(bar.SameAs)).ThenBy(bar => job.Used(bar.Counts)).ToList();
        for (var i = 0; i < job.Demand.Length; i++)
        {
            var excess = plan.Sum(bar => bar.Counts[i]) - job.Demand[i];

            // Spoiling bars that are cut alike anyway seldom keeps the number of patterns down.
            foreach (var bar in seldom)
            {
                var spare = Math.Clamp(excess, 0, bar.Counts[i]);
                bar.Counts[i] -= spare;
                excess -= spare;
            }
        }

        plan.RemoveAll(bar => Array.TrueForAll(bar.Counts, count => count == 0));
        return FirstFitDecreasing.Swapped(job, plan);
    }
}
