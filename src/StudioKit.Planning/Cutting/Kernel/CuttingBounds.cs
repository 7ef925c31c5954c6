using StudioKit.Physics.Sources;

namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Numbers that no cut plan can be below.</summary>
internal static class CuttingBounds
{
    // Beyond this many pieces in a bar the bound by total length is as good.
    private const int MostPerBar = 20;

    /// <summary>Least cost of enough stock, were the pieces liquid: the best value per size first.</summary>
    /// <param name="demand">Total size of all pieces, kerf included [any unit]; ≥ 0.</param>
    /// <param name="stock">Size in the unit of <paramref name="demand"/>, cost [ticks] and number of each stock.</param>
    /// <returns>Cost, rounded up to whole ticks [ticks]; all the stock's cost where it does not suffice.</returns>
    [Source("MartelloToth1990", "ch. 8, continuous bound L1, here with several prices")]
    public static long Continuous(long demand, IEnumerable<(long Size, long Cost, int Available)> stock)
    {
        var cost = 0m;
        var missing = (decimal)demand;
        foreach (var (size, price, available) in stock.OrderBy(row => (decimal)row.Cost / row.Size))
        {
            var taken = Math.Min(missing, (decimal)size * available);
            cost += taken * price / size;
            missing -= taken;
        }

        // Decimal division rounds in the 28th digit; a bound must not gain a whole tick by it.
        return (long)Math.Ceiling(cost - 1e-9m);
    }

    /// <summary>Bound L2 on the number of equal bars: pieces above half a bar can't share one.</summary>
    /// <param name="capacity">Bar length [tenths of a millimetre, kerf included]; &gt; 0.</param>
    /// <param name="lengths">Piece lengths [tenths of a millimetre, kerf included]; each at most <paramref name="capacity"/>.</param>
    /// <param name="counts">Number of each piece [1].</param>
    /// <returns>Number of bars [1].</returns>
    [Source("MartelloToth1990", "ch. 8, bound L2")]
    public static int L2(int capacity, int[] lengths, int[] counts)
    {
        var thresholds = lengths.Where(length => 2L * length <= capacity).Append(0).Distinct();
        return thresholds.Max(threshold => L2At(threshold, capacity, lengths, counts));
    }

    /// <summary>Bound on the number of equal bars from how many long pieces one bar can hold.</summary>
    /// <param name="capacity">Bar length [tenths of a millimetre, kerf included]; &gt; 0.</param>
    /// <param name="lengths">Piece lengths [tenths of a millimetre, kerf included]; each at most <paramref name="capacity"/>.</param>
    /// <param name="counts">Number of each piece [1].</param>
    /// <returns>Number of bars [1].</returns>
    /// <remarks>At most k pieces longer than capacity/(k + 1) fit one bar: ⌈n(l &gt; c/(k + 1))/k⌉, the largest over k.</remarks>
    [Source("Derived", "pigeonhole")]
    public static int PiecesPerBar(int capacity, int[] lengths, int[] counts) => Enumerable.Range(1, MostPerBar).Max(most =>
    {
        var longer = lengths.Select((length, i) => (most + 1L) * length > capacity ? counts[i] : 0).Sum();
        return (longer + most - 1) / most;
    });

    private static int L2At(int threshold, int capacity, int[] lengths, int[] counts)
    {
        long alone = 0, large = 0, largeSum = 0, smallSum = 0;
        for (var i = 0; i < lengths.Length; i++)
        {
            if (lengths[i] > capacity - threshold)
            {
                alone += counts[i];
            }
            else if (2L * lengths[i] > capacity)
            {
                large += counts[i];
                largeSum += (long)lengths[i] * counts[i];
            }
            else if (lengths[i] >= threshold)
            {
                smallSum += (long)lengths[i] * counts[i];
            }
        }

        var overflow = smallSum - ((large * capacity) - largeSum);
        return (int)(alone + large + Math.Max(0, (overflow + capacity - 1) / capacity));
    }
}
