using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Makes a plan of a small job tidier at no more cost: what a few patterns cut, fewer may cut as well. No solver is loaded for it.</summary>
internal sealed class PatternMerging
{
    private const int MostTogether = 4;

    private readonly BarJob _job;
    private readonly PiecePrices _prices;
    private readonly int[] _left;
    private List<(BarPattern Pattern, int Times)> _groups;
    private long _stepsLeft;

    private PatternMerging(BarJob job, PiecePrices prices, IReadOnlyList<BarPattern> bars, long steps)
    {
        _job = job;
        _prices = prices;
        _stepsLeft = steps;
        _left = [.. job.Stock.Select((bar, j) => bar.Available - bars.Count(taken => taken.Stock == j))];
        _groups = [.. bars.GroupBy(bar => bars.First(bar.SameAs)).Select(group => (group.Key, group.Count()))];
    }

    /// <summary>Merges what can be merged, a few patterns at a time.</summary>
    /// <param name="job">The job.</param>
    /// <param name="prices">Prices of its pieces.</param>
    /// <param name="bars">A whole plan.</param>
    /// <param name="steps">How many steps it may take [1].</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <returns>A plan with no more patterns at no more cost.</returns>
    public static IReadOnlyList<BarPattern> Merged(
        BarJob job, PiecePrices prices, IReadOnlyList<BarPattern> bars, long steps, CancellationToken cancellationToken)
    {
        var merging = new PatternMerging(job, prices, bars, steps);
        while (merging._stepsLeft > 0 && !cancellationToken.IsCancellationRequested && merging.MergesSome())
        {
        }

        return [.. merging._groups.SelectMany(group => Enumerable.Repeat(group.Pattern, group.Times))];
    }

    private bool MergesSome()
    {
        for (var together = 2; together <= Math.Min(MostTogether, _groups.Count); together++)
        {
            foreach (var chosen in Choices(together, _groups.Count))
            {
                if (_stepsLeft > 0 && Merges(chosen))
                {
                    return true;
                }
            }
        }

        return false;
    }

    private static IEnumerable<int[]> Choices(int number, int of)
    {
        var chosen = Enumerable.Range(0, number).ToArray();
        while (true)
        {
            yield return [.. chosen];
            var last = number - 1;
            while (last >= 0 && chosen[last] == of - number + last)
            {
                last--;
            }

            if (last < 0)
            {
                yield break;
            }

            chosen[last]++;
            for (var next = last + 1; next < number; next++)
            {
                chosen[next] = chosen[next - 1] + 1;
            }
        }
    }

    private bool Merges(int[] chosen)
    {
        var groups = chosen.Select(index => _groups[index]).ToArray();
        var cut = new int[_job.Lengths.Length];
        foreach (var (pattern, times) in groups)
        {
            Add(cut, pattern.Counts, times);
            _left[pattern.Stock] += times;
        }

        var cost = groups.Sum(group => group.Times * _job.Stock[group.Pattern.Stock].Cost);
        var fewer = new List<(BarPattern Pattern, int Times)>();
        var merges = Cuts(cut, groups.Length - 1, cost, fewer);
        foreach (var (pattern, times) in merges ? fewer : [.. groups])
        {
            _left[pattern.Stock] -= times;
        }

        if (merges)
        {
            _groups = [.. _groups.Where((_, index) => !chosen.Contains(index)), .. fewer];
        }

        return merges;
    }

    /// <summary>Whether so many patterns cut exactly these pieces within the budget.</summary>
    private bool Cuts(int[] pieces, int patterns, long budget, List<(BarPattern Pattern, int Times)> found)
    {
        var longest = Array.FindIndex(pieces, count => count > 0);
        if (longest < 0)
        {
            return true;
        }

        if (patterns == 1)
        {
            return CutsAlike(pieces, budget, found);
        }

        foreach (var (pattern, times) in Repeated(pieces, longest, budget))
        {
            Add(pieces, pattern.Counts, -times);
            _left[pattern.Stock] -= times;
            found.Add((pattern, times));
            var cuts = Cuts(pieces, patterns - 1, budget - (times * _job.Stock[pattern.Stock].Cost), found);
            Add(pieces, pattern.Counts, times);
            _left[pattern.Stock] += times;
            if (cuts)
            {
                return true;
            }

            found.RemoveAt(found.Count - 1);
            if (_stepsLeft <= 0)
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>Whether bars that are all alike cut the pieces.</summary>
    private bool CutsAlike(int[] pieces, long budget, List<(BarPattern Pattern, int Times)> found)
    {
        var most = pieces.Where(count => count > 0).Min();
        for (var times = 1; times <= most; times++)
        {
            _stepsLeft--;
            if (Array.Exists(pieces, count => count % times != 0))
            {
                continue;
            }

            var used = _job.Used(pieces) / times;
            for (var j = 0; j < _left.Length; j++)
            {
                if (_left[j] >= times && _job.Stock[j].Capacity >= used && times * _job.Stock[j].Cost <= budget)
                {
                    found.Add((new BarPattern(j, [.. pieces.Select(count => count / times)]), times));
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>Patterns that hold the longest piece, as often as they can be of use, most often first.</summary>
    private List<(BarPattern Pattern, int Times)> Repeated(int[] pieces, int longest, long budget)
    {
        var found = new List<(BarPattern Pattern, int Times)>();
        var missing = pieces.Select((count, i) => count * _prices.Piece[i]).Sum() - _left.Select((bars, j) => bars * _prices.Gain[j]).Sum();
        for (var j = 0; j < _left.Length; j++)
        {
            var most = Math.Min(_left[j], pieces[longest]);
            for (var times = 1; times <= most && times * _job.Stock[j].Cost <= budget; times++)
            {
                var least = missing + (times * _prices.Gain[j]) - ((budget - (times * _job.Stock[j].Cost)) * PatternPrices.Scale);
                Fill(new Filling(j, times, pieces, new int[pieces.Length], least, found), longest, _job.Stock[j].Capacity, 0, least: 1);
            }
        }

        found.Sort((a, b) => b.Times.CompareTo(a.Times));
        return found;
    }

    private void Fill(Filling filling, int i, int room, long worth, int least)
    {
        _stepsLeft--;
        if (_stepsLeft <= 0)
        {
            return;
        }

        if (i == filling.Counts.Length)
        {
            if (worth * filling.Times >= filling.LeastWorth)
            {
                filling.Found.Add((new BarPattern(filling.Stock, [.. filling.Counts]), filling.Times));
            }

            return;
        }

        for (var n = Math.Min(filling.Pieces[i] / filling.Times, room / _job.Lengths[i]); n >= least; n--)
        {
            filling.Counts[i] = n;
            Fill(filling, i + 1, room - (n * _job.Lengths[i]), worth + (n * _prices.Piece[i]), 0);
        }

        filling.Counts[i] = 0;
    }

    private static void Add(int[] pieces, int[] counts, int times)
    {
        for (var i = 0; i < pieces.Length; i++)
        {
            pieces[i] += times * counts[i];
        }
    }

    private sealed record Filling(int Stock, int Times, int[] Pieces, int[] Counts, long LeastWorth, List<(BarPattern Pattern, int Times)> Found);
}
