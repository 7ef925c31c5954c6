using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>The same knapsack by dynamic programming over the room in the bar: never quick, never slow.</summary>
internal static class PatternTable
{
    public static (long Worth, int[] Counts, long Steps) Best(BarJob job, int capacity, long[] worth)
    {
        var unit = job.Lengths.Aggregate(GreatestCommonDivisor);
        var room = capacity / unit;
        var best = new long[room + 1];
        var bundles = Bundles(job, worth).ToArray();
        var taken = new bool[bundles.Length][];
        for (var b = 0; b < bundles.Length; b++)
        {
            taken[b] = Add(best, bundles[b].Size / unit, bundles[b].Worth);
        }

        return (best[room], Counts(job, bundles, taken, room, unit), (long)bundles.Length * room);
    }

    /// <summary>Up to n pieces as bundles of 1, 2, 4 …, any number of pieces being a choice of bundles.</summary>
    private static IEnumerable<(int Length, int Pieces, int Size, long Worth)> Bundles(BarJob job, long[] worth)
    {
        for (var i = 0; i < worth.Length; i++)
        {
            var left = worth[i] > 0 ? job.Demand[i] : 0;
            for (var n = 1; left > 0; n *= 2)
            {
                var pieces = Math.Min(n, left);
                left -= pieces;
                yield return (i, pieces, (int)Math.Min(int.MaxValue, (long)pieces * job.Lengths[i]), pieces * worth[i]);
            }
        }
    }

    private static bool[] Add(long[] best, int size, long worth)
    {
        var taken = new bool[best.Length];
        for (var c = best.Length - 1; c >= size; c--)
        {
            if (best[c - size] + worth > best[c])
            {
                best[c] = best[c - size] + worth;
                taken[c] = true;
            }
        }

        return taken;
    }

    private static int[] Counts(
        BarJob job, (int Length, int Pieces, int Size, long Worth)[] bundles, bool[][] taken, int room, int unit)
    {
        var counts = new int[job.Lengths.Length];
        for (var b = bundles.Length - 1; b >= 0; b--)
        {
            if (taken[b][room])
            {
                counts[bundles[b].Length] += bundles[b].Pieces;
                room -= bundles[b].Size / unit;
            }
        }

        return counts;
    }

    private static int GreatestCommonDivisor(int a, int b) => b == 0 ? a : GreatestCommonDivisor(b, a % b);
}
