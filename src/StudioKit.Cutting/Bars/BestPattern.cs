using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>The pattern worth most that fits a bar: a bounded knapsack, solved exactly.</summary>
internal sealed class BestPattern
{
    // Depth-first search is quick unless all pieces are worth their length; then the table takes over.
    private const int MostNodes = 100_000;

    private readonly BarJob _job;
    private readonly long[] _worth;
    private readonly int[] _order;
    private readonly int[] _counts;
    private int[] _best;
    private long _bestWorth;
    private int _nodes;

    private BestPattern(BarJob job, long[] worth)
    {
        _job = job;
        _worth = worth;
        _order = [.. Enumerable.Range(0, worth.Length).Where(i => worth[i] > 0).OrderByDescending(i => (double)worth[i] / job.Lengths[i])];
        _counts = new int[worth.Length];
        _best = new int[worth.Length];
    }

    /// <summary>Finds it.</summary>
    /// <param name="job">The job; no pattern holds more of a piece than the job asks for.</param>
    /// <param name="capacity">Room in the bar [tenths of a millimetre].</param>
    /// <param name="worth">Worth of a piece of each length; ≥ 0.</param>
    /// <returns>The worth, the counts, and the steps it took [1].</returns>
    public static (long Worth, int[] Counts, long Steps) Find(BarJob job, int capacity, long[] worth)
    {
        var search = new BestPattern(job, worth);
        search.Descend(0, capacity, 0);
        return search._nodes < MostNodes ? (search._bestWorth, search._best, search._nodes) : PatternTable.Best(job, capacity, worth);
    }

    private void Descend(int depth, int room, long worth)
    {
        _nodes++;
        if (worth > _bestWorth)
        {
            _bestWorth = worth;
            _best = [.. _counts];
        }

        if (depth == _order.Length || _nodes >= MostNodes)
        {
            return;
        }

        var i = _order[depth];

        // The density of the best remaining piece bounds what the rest of the bar can be worth.
        if (worth + (long)Math.Floor((double)_worth[i] / _job.Lengths[i] * room * (1 + 1e-12)) <= _bestWorth)
        {
            return;
        }

        for (var n = Math.Min(_job.Demand[i], room / _job.Lengths[i]); n >= 0; n--)
        {
            _counts[i] = n;
            Descend(depth + 1, room - (n * _job.Lengths[i]), worth + (n * _worth[i]));
        }

        _counts[i] = 0;
    }
}
