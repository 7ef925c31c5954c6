using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Looks for a plan of a small job within a budget by trying all that could differ; no solver is loaded for it.</summary>
/// <remarks>
/// The longest piece left goes on some bar, which is then filled until no other piece fits: a plan that leaves room for one can as well take it.
/// What is wasted of a bar must leave money for bars as long as all that is missing, and for what it is worth. Pieces that were found to need more than some budget are
/// remembered, for later questions too.
/// </remarks>
internal sealed class DirectPacking
{
    // A state of pieces and bars is one number.
    private const int MostBits = 62;

    private readonly BarJob _job;
    private readonly PiecePrices _prices;
    private readonly Reach _reach;
    private readonly long[] _strides;
    private readonly Dictionary<long, long> _tooLittle = [];
    private readonly List<BarPattern> _placed = [];
    private readonly int[] _missing;
    private readonly int[] _left;
    private readonly long[] _missingLengthFrom;
    private readonly long[] _missingWorthFrom;
    private readonly double[] _densestFrom;
    private long _stepsLeft;
    private CancellationToken _cancellationToken;

    private DirectPacking(BarJob job, PiecePrices prices, Reach reach, long[] strides, long steps)
    {
        _job = job;
        _prices = prices;
        _reach = reach;
        _strides = strides;
        _missing = new int[job.Lengths.Length];
        _left = new int[job.Stock.Length];
        _missingLengthFrom = new long[job.Lengths.Length + 1];
        _missingWorthFrom = new long[job.Lengths.Length + 1];
        _densestFrom = new double[job.Lengths.Length + 1];
        for (var i = job.Lengths.Length - 1; i >= 0; i--)
        {
            _densestFrom[i] = Math.Max(_densestFrom[i + 1], (double)prices.Piece[i] / job.Lengths[i]);
        }

        _stepsLeft = steps;
    }

    /// <summary>Prepares for a job.</summary>
    /// <param name="job">The job.</param>
    /// <param name="prices">Prices of its pieces.</param>
    /// <param name="budget">The largest budget that is asked of [ticks].</param>
    /// <param name="steps">How many steps all questions together may take [1].</param>
    /// <returns>What answers; null where the job has more combinations than can be numbered or looked at.</returns>
    public static DirectPacking? For(BarJob job, PiecePrices prices, long budget, long steps)
    {
        int[] numbers = [.. job.Demand, .. job.Stock.Select((bar, j) => prices.Counted[j] ? bar.Available : 0)];
        return numbers.Sum(number => Math.Log2(number + 1)) < MostBits && Bought(job, prices, budget) is { } reach
            ? new DirectPacking(job, prices, reach, Strides(numbers), steps)
            : null;
    }

    /// <summary>What can be bought, each bar no longer than what the job's pieces can use of it.</summary>
    private static Reach? Bought(BarJob job, PiecePrices prices, long budget)
    {
        long[] worth = [.. job.Lengths.Select(length => (long)length)];
        return Reach.Of(
            [
                .. job.Stock.Where((_, j) => !prices.Counted[j])
                    .Select(bar => bar with { Capacity = (int)PatternTable.Best(job, bar.Capacity, worth).Worth }),
            ],
            budget,
            job.Used(job.Demand));
    }

    private static long[] Strides(int[] numbers)
    {
        var strides = new long[numbers.Length];
        var stride = 1L;
        for (var i = 0; i < numbers.Length; i++)
        {
            strides[i] = stride;
            stride *= numbers[i] + 1;
        }

        return strides;
    }

    /// <summary>Asks.</summary>
    /// <param name="budget">What the bars may cost [ticks].</param>
    /// <param name="cancellationToken">Ends the search early.</param>
    /// <returns>How the pieces fit, that they do not, or neither where the steps were used up.</returns>
    public BarPackingResult Within(long budget, CancellationToken cancellationToken)
    {
        _cancellationToken = cancellationToken;
        _placed.Clear();
        _job.Demand.CopyTo(_missing, 0);
        for (var j = 0; j < _left.Length; j++)
        {
            _left[j] = _job.Stock[j].Available;
        }

        var fits = Place(budget);
        return new BarPackingResult(fits ? [.. _placed] : null, !fits && !Ended, 0);
    }

    private bool Ended => _stepsLeft <= 0 || _cancellationToken.IsCancellationRequested;

    private bool Place(long budget)
    {
        var longest = Array.FindIndex(_missing, count => count > 0);
        if (longest < 0)
        {
            return true;
        }

        var state = State();
        if (_tooLittle.TryGetValue(state, out var tooLittle) && budget <= tooLittle)
        {
            return false;
        }

        foreach (var (pattern, _) in Fillings(longest, budget))
        {
            Take(pattern, 1);
            if (Place(budget - _job.Stock[pattern.Stock].Cost))
            {
                return true;
            }

            Take(pattern, -1);
            if (Ended)
            {
                return false;
            }
        }

        _tooLittle[state] = budget;
        return false;
    }

    private long State()
    {
        var state = 0L;
        for (var i = 0; i < _missing.Length; i++)
        {
            state += _strides[i] * _missing[i];
        }

        for (var j = 0; j < _left.Length; j++)
        {
            state += _prices.Counted[j] ? _strides[_missing.Length + j] * _left[j] : 0;
        }

        return state;
    }

    private void Take(BarPattern pattern, int times)
    {
        _left[pattern.Stock] -= times;
        for (var i = 0; i < _missing.Length; i++)
        {
            _missing[i] -= times * pattern.Counts[i];
        }

        if (times > 0)
        {
            _placed.Add(pattern);
        }
        else
        {
            _placed.RemoveAt(_placed.Count - 1);
        }
    }

    /// <summary>All ways of filling a bar that is left, affordable and holds the longest piece missing; that which leaves most room for waste first.</summary>
    private List<(BarPattern Pattern, long Spare)> Fillings(int longest, long budget)
    {
        for (var i = _missing.Length - 1; i >= 0; i--)
        {
            _missingLengthFrom[i] = _missingLengthFrom[i + 1] + ((long)_missing[i] * _job.Lengths[i]);
            _missingWorthFrom[i] = _missingWorthFrom[i + 1] + (_missing[i] * _prices.Piece[i]);
        }

        var gained = 0L;
        var onHand = 0L;
        for (var j = 0; j < _left.Length; j++)
        {
            onHand += _prices.Counted[j] ? (long)_left[j] * _job.Stock[j].Capacity : 0;
            gained += _left[j] * _prices.Gain[j];
        }

        var found = new List<(BarPattern Pattern, long Spare)>();
        var counts = new int[_missing.Length];
        for (var j = 0; j < _left.Length; j++)
        {
            var (capacity, cost, rest) = (_job.Stock[j].Capacity, _job.Stock[j].Cost, budget - _job.Stock[j].Cost);
            if (_left[j] > 0 && rest >= 0)
            {
                var held = _reach.For(rest) + onHand + (_prices.Counted[j] ? 0 : capacity);
                var worth = _missingWorthFrom[0] - (rest * PatternPrices.Scale) - gained + _prices.Gain[j];
                Fill(new Filling(j, counts, held - _missingLengthFrom[0], worth, found), longest, capacity, 0, least: 1);
            }
        }

        found.Sort((a, b) => b.Spare.CompareTo(a.Spare));
        return found;
    }

    private void Fill(Filling filling, int i, int room, long worth, int least)
    {
        _stepsLeft--;
        if (_stepsLeft <= 0 || room - _missingLengthFrom[i] > filling.Slack
            || worth + Math.Min(_missingWorthFrom[i], (long)(_densestFrom[i] * room * (1 + 1e-9)) + 1) < filling.LeastWorth)
        {
            return;
        }

        if (i == _missing.Length)
        {
            if (!RoomForOneMore(filling.Counts, room) && !RoomForLonger(filling.Counts, room))
            {
                filling.Found.Add((new BarPattern(filling.Stock, [.. filling.Counts]), filling.Slack - room));
            }

            return;
        }

        for (var n = Math.Min(_missing[i], room / _job.Lengths[i]); n >= least; n--)
        {
            filling.Counts[i] = n;
            Fill(filling, i + 1, room - (n * _job.Lengths[i]), worth + (n * _prices.Piece[i]), 0);
        }

        filling.Counts[i] = 0;
    }

    private bool RoomForOneMore(int[] counts, int room)
    {
        for (var i = counts.Length - 1; i >= 0 && _job.Lengths[i] <= room; i--)
        {
            if (counts[i] < _missing[i])
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Whether a longer piece that is missing fits in place of one or of two: where that one stands, those stand as well.</summary>
    private bool RoomForLonger(int[] counts, int room)
    {
        for (var p = counts.Length - 1; p > 0; p--)
        {
            if (counts[p] == 0)
            {
                continue;
            }

            if (MissingBetween(counts, _job.Lengths[p] + 1, _job.Lengths[p] + room))
            {
                return true;
            }

            for (var other = counts.Length - 1; other >= p; other--)
            {
                var two = _job.Lengths[p] + _job.Lengths[other];
                if (counts[other] > (other == p ? 1 : 0) && MissingBetween(counts, two, two + room))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private bool MissingBetween(int[] counts, int shortest, int longest)
    {
        for (var i = 0; i < counts.Length && _job.Lengths[i] >= shortest; i++)
        {
            if (_job.Lengths[i] <= longest && counts[i] < _missing[i])
            {
                return true;
            }
        }

        return false;
    }

    private sealed record Filling(int Stock, int[] Counts, long Slack, long LeastWorth, List<(BarPattern Pattern, long Spare)> Found);
}
