using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Settles a small job by asking of every number of each stock, cheapest first, whether the pieces fit into those bars.</summary>
/// <remarks>
/// The cost of a plan depends on these numbers alone. Where bars are few, long and cut into many pieces, the ways of cutting one bar are
/// beyond listing, but there are only few numbers of bars between the bound and the best plan known.
/// </remarks>
internal static class StockNumbers
{
    private const int MostCombinations = 300;
    private const int MostBars = 24;

    /// <summary>Looks for the cheapest plan between two costs.</summary>
    /// <param name="job">The job.</param>
    /// <param name="floor">No plan costs less [ticks].</param>
    /// <param name="ceiling">No plan that costs more is wanted [ticks].</param>
    /// <param name="work">How much work the solver may spend in all [units].</param>
    /// <param name="cancellationToken">Ends the search early.</param>
    /// <returns>A plan, or what cost the search got to without one; null where there are too many numbers to ask.</returns>
    public static PatternProgramResult? Cheapest(BarJob job, long floor, long ceiling, double work, CancellationToken cancellationToken)
    {
        if (Between(job, floor, ceiling) is not { } combinations)
        {
            return null;
        }

        foreach (var numbers in combinations)
        {
            var cost = CostOf(job, numbers);
            var packing = BarPacking.Into(job, numbers, work, cancellationToken);
            work -= packing.Work;
            if (packing.Bars is { } bars)
            {
                return new PatternProgramResult(bars, Exhausted: true, cost);
            }

            if (!packing.ProvenImpossible)
            {
                return new PatternProgramResult(null, Exhausted: false, cost);
            }
        }

        return new PatternProgramResult(null, Exhausted: true, ceiling + 1);
    }

    private static List<int[]>? Between(BarJob job, long floor, long ceiling)
    {
        var length = job.Lengths.Select((piece, i) => (long)piece * job.Demand[i]).Sum();
        List<int[]> found = [];
        var enough = Descend(job, new int[job.Stock.Length], 0, (floor, ceiling), length, found);
        return enough ? [.. found.OrderBy(numbers => CostOf(job, numbers)).ThenBy(numbers => numbers.Sum())] : null;
    }

    private static bool Descend(BarJob job, int[] numbers, int j, (long Floor, long Ceiling) cost, long length, List<int[]> found)
    {
        if (j == numbers.Length)
        {
            if (cost.Floor <= 0 && length <= 0)
            {
                found.Add([.. numbers]);
            }

            return found.Count <= MostCombinations;
        }

        var bar = job.Stock[j];
        var most = Math.Min(bar.Available, MostBars - numbers.Take(j).Sum());
        for (var n = 0; n <= most && n * bar.Cost <= cost.Ceiling; n++)
        {
            numbers[j] = n;
            var left = (cost.Floor - (n * bar.Cost), cost.Ceiling - (n * bar.Cost));
            if (!Descend(job, numbers, j + 1, left, length - ((long)n * bar.Capacity), found))
            {
                return false;
            }
        }

        numbers[j] = 0;
        return true;
    }

    private static long CostOf(BarJob job, int[] numbers) => numbers.Select((n, j) => n * job.Stock[j].Cost).Sum();
}
