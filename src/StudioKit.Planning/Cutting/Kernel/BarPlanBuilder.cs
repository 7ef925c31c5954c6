using UnitsNet;

namespace StudioKit.Planning.Cutting.Kernel;

/// <summary>Turns patterns into a plan with labels and running measures.</summary>
internal sealed class BarPlanBuilder
{
    private readonly BarJob _job;
    private readonly int[] _taken;

    private BarPlanBuilder(BarJob job)
    {
        _job = job;
        _taken = new int[job.Lengths.Length];
    }

    public static BarCutPlan Build(BarJob job, IEnumerable<BarPattern> patterns, long lowerBound, string method) =>
        new BarPlanBuilder(job).Build(patterns, lowerBound, method);

    private BarCutPlan Build(IEnumerable<BarPattern> patterns, long lowerBound, string method)
    {
        var groups = Grouped(patterns);
        var bars = new List<CutBar>();
        for (var g = 0; g < groups.Count; g++)
        {
            bars.AddRange(groups[g].Select((pattern, i) => Bar(bars.Count + i + 1, g + 1, pattern)).ToArray());
        }

        var uncut = _job.TooLong.Concat(Missing()).ToArray();
        var offcuts = Offcuts(bars);
        var value = groups.Sum(group => group.Count * _job.Stock[group[0].Stock].Cost);
        return new BarCutPlan
        {
            Bars = bars,
            Uncut = uncut,
            Proof = new CutProof(
                _job.Prices.Objective, value * _job.Prices.Tick, lowerBound * _job.Prices.Tick, uncut.Length == 0, method),
            Offcuts = offcuts,
            StockForNextTime = [.. offcuts, .. NotTaken(groups)],
        };
    }

    /// <summary>Bars cut alike stand together; what is on hand is cut first, then the most frequent pattern.</summary>
    private List<List<BarPattern>> Grouped(IEnumerable<BarPattern> patterns)
    {
        var groups = new List<List<BarPattern>>();
        foreach (var pattern in patterns)
        {
            var group = groups.Find(known => known[0].SameAs(pattern));
            if (group is null)
            {
                groups.Add([pattern]);
            }
            else
            {
                group.Add(pattern);
            }
        }

        return [.. groups.OrderBy(group => _job.Stock[group[0].Stock].Row).ThenByDescending(group => group.Count)];
    }

    private CutBar Bar(int number, int patternNumber, BarPattern pattern)
    {
        var stock = _job.Request.Stock[_job.Stock[pattern.Stock].Row];
        var marks = new List<CutMark>();
        var start = 0;

        // Short pieces first, while the bar is long enough to be clamped.
        for (var i = pattern.Counts.Length - 1; i >= 0; i--)
        {
            for (var n = 0; n < pattern.Counts[i]; n++)
            {
                var piece = _job.Pieces[i][_taken[i]++];
                var end = start + _job.FinishedLength(i);
                marks.Add(new CutMark(piece.Label, piece.Length, Tenths.ToLength(start), Tenths.ToLength(end)));
                start = end + _job.Kerf;
            }
        }

        // The bar lends one kerf, so a bar filled to the end needs no last cut.
        var rest = _job.Stock[pattern.Stock].Capacity - start;
        var cuts = marks.Count - (rest == 0 ? 1 : 0) + (_job.Trim > 0 ? 1 : 0);
        return new CutBar(
            number, patternNumber, stock.Label, stock.Length, stock.Price, Tenths.ToLength(_job.Trim), marks, Tenths.ToLength(Math.Max(0, rest - _job.Kerf)), cuts)
        { Sold = stock.Sold };
    }

    private IEnumerable<UncutPiece> Missing() =>
        from i in Enumerable.Range(0, _taken.Length)
        from missing in _job.Pieces[i].Skip(_taken[i]).GroupBy(piece => piece.Label, StringComparer.Ordinal)
        select new UncutPiece(missing.Key, Tenths.ToLength(_job.FinishedLength(i)), null, missing.Count(), UncutReason.NotEnoughStock);

    private StockBar[] Offcuts(List<CutBar> bars) =>
    [
        .. bars.Select(bar => bar.Offcut)
            .Where(offcut => offcut > Length.Zero && offcut >= _job.Request.ShortestKeptOffcut)
            .GroupBy(offcut => offcut.Millimeters)
            .OrderByDescending(group => group.Key)
            .Select(group => new StockBar("offcut", Length.FromMillimeters(group.Key), 0, group.Count())),
    ];

    private IEnumerable<StockBar> NotTaken(List<List<BarPattern>> groups)
    {
        var taken = groups.ToLookup(group => _job.Stock[group[0].Stock].Row, group => group.Count);
        return _job.Request.Stock
            .Select((stock, row) => stock with { Count = stock.Count - taken[row].Sum() })
            .Where(stock => stock.Count > 0);
    }
}
