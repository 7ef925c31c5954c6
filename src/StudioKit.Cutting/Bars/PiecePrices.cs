using StudioKit.Physics.Sources;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Prices of pieces at which no bar that can be bought at will pays: at these prices, pieces can't be cut for less than they are worth.</summary>
/// <remarks>
/// The dual of the job with patterns used in parts: max Σ demand·price, no pattern worth more than its bar. Patterns are thought of when they are worth too much.
/// The linear program's answer is scaled in whole numbers until every pattern keeps to it.
/// </remarks>
internal sealed class PiecePrices
{
    private const int MostRounds = 100;

    private readonly BarJob _job;
    private readonly List<(int[] Counts, double Cost)> _patterns = [];

    private PiecePrices(BarJob job)
    {
        _job = job;
        Counted = [.. job.Stock.Select(bar => bar.Cost == 0 || bar.Available < job.Demand.Sum())];
        Piece = new long[job.Lengths.Length];
        Gain = new long[job.Stock.Length];
    }

    /// <summary>Whether each stock may run out or costs nothing; its bars are not what prices go by.</summary>
    public bool[] Counted { get; }

    /// <summary>The price of a piece of each length [10⁻⁶ tick]; ≥ 0, and all 0 where nothing can be bought at will.</summary>
    public long[] Piece { get; private set; }

    /// <summary>By how much the pieces on a bar of each stock can be worth more than the bar [10⁻⁶ tick]; 0 where it is not counted.</summary>
    public long[] Gain { get; }

    /// <summary>Finds them.</summary>
    [Source("GilmoreGomory1961", "column generation with a knapsack problem for the next pattern, here as rows of the dual")]
    public static PiecePrices Of(BarJob job)
    {
        var prices = new PiecePrices(job);
        int[] bought = [.. Enumerable.Range(0, job.Stock.Length).Where(j => !prices.Counted[j])];
        if (bought.Length > 0)
        {
            prices.Settle(bought);
        }

        for (var j = 0; j < job.Stock.Length; j++)
        {
            prices.Gain[j] = prices.Counted[j] ? Math.Max(0, prices.Best(j).Worth - (job.Stock[j].Cost * PatternPrices.Scale)) : 0;
        }

        return prices;
    }

    private void Settle(int[] bought)
    {
        foreach (var j in bought)
        {
            for (var i = 0; i < Piece.Length; i++)
            {
                var alone = new int[Piece.Length];
                alone[i] = Math.Min(_job.Demand[i], _job.Stock[j].Capacity / _job.Lengths[i]);
                _patterns.Add((alone, _job.Stock[j].Cost));
            }
        }

        Solve();
        for (var round = 0; round < MostRounds && Tightened(bought); round++)
        {
            Solve();
        }

        var share = bought.Min(j => Math.Min(1, (double)_job.Stock[j].Cost * PatternPrices.Scale / Math.Max(1, Best(j).Worth)));
        Piece = [.. Piece.Select(price => (long)Math.Floor(price * share * (1 - 1e-12)))];
    }

    private void Solve() =>
        Piece = [.. SmallLinearProgram.Solve(_job.Demand, _patterns).Select(price => (long)Math.Floor(price * PatternPrices.Scale))];

    /// <summary>Whether a pattern was found that is worth more than its bar.</summary>
    private bool Tightened(int[] bought)
    {
        var known = _patterns.Count;
        foreach (var j in bought)
        {
            var (worth, counts) = Best(j);
            if (worth > _job.Stock[j].Cost * PatternPrices.Scale * (1 + 1e-7))
            {
                _patterns.Add((counts, _job.Stock[j].Cost));
            }
        }

        return _patterns.Count > known;
    }

    private (long Worth, int[] Counts) Best(int stock)
    {
        var (worth, counts, _) = BestPattern.Find(_job, _job.Stock[stock].Capacity, Piece);
        return (worth, counts);
    }
}
