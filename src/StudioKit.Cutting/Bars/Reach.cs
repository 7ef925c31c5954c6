using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>How long the bars are, end to end, that a budget buys.</summary>
internal sealed class Reach
{
    private const int MostTried = 200_000;

    private readonly BarStock[] _stock;
    private readonly long _budget;
    private readonly long _enough;
    private readonly SortedDictionary<long, long> _longest = [];
    private int _tried;
    private long[] _costs = [];
    private long[] _lengths = [];

    private Reach(BarStock[] stock, long budget, long enough)
    {
        _stock = stock;
        _budget = budget;
        _enough = enough;
    }

    /// <summary>Looks at everything that can be bought.</summary>
    /// <param name="stock">What can be bought, without limit.</param>
    /// <param name="budget">The largest budget that is asked of [ticks].</param>
    /// <param name="enough">Length beyond which nobody asks [tenths of a millimetre].</param>
    /// <returns>Null where that is too much to look at.</returns>
    public static Reach? Of(BarStock[] stock, long budget, long enough)
    {
        var reach = new Reach(stock, budget, enough);
        reach.Buy(0, 0, 0);
        if (reach._tried > MostTried)
        {
            return null;
        }

        reach.Settle();
        return reach;
    }

    /// <summary>The greatest length [tenths of a millimetre].</summary>
    /// <param name="budget">What may be spent [ticks]; at most what was said at first.</param>
    public long For(long budget)
    {
        var at = Array.BinarySearch(_costs, budget);
        return budget < 0 ? 0 : _lengths[at >= 0 ? at : ~at - 1];
    }

    private void Buy(int j, long cost, long length)
    {
        if (++_tried > MostTried)
        {
            return;
        }

        if (j == _stock.Length)
        {
            _longest[cost] = Math.Max(length, _longest.GetValueOrDefault(cost));
            return;
        }

        for (var n = 0L; cost + (n * _stock[j].Cost) <= _budget; n++)
        {
            Buy(j + 1, cost + (n * _stock[j].Cost), length + (n * _stock[j].Capacity));
            if (length + (n * _stock[j].Capacity) >= _enough)
            {
                return;
            }
        }
    }

    /// <summary>Keeps what no cheaper purchase is as long as.</summary>
    private void Settle()
    {
        var kept = new List<KeyValuePair<long, long>> { new(0, 0) };
        foreach (var purchase in _longest)
        {
            if (purchase.Value > kept[^1].Value)
            {
                kept.Add(purchase);
            }
        }

        _costs = [.. kept.Select(purchase => purchase.Key)];
        _lengths = [.. kept.Select(purchase => purchase.Value)];
    }
}
