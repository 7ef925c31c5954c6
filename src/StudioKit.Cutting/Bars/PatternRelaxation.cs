using Google.OrTools.LinearSolver;
using StudioKit.Physics.Sources;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>The job with patterns used in parts, solved by column generation: patterns are thought of only when they pay.</summary>
/// <remarks>
/// min Σ c·x + Σ penalty·u, Σ a·x + u ≥ demand for each length, Σ x ≤ available for each stock. The linear solver's prices are
/// only a hint: the bound is worked out from them in whole numbers, so that its tolerance can't spoil a proof.
/// </remarks>
internal sealed class PatternRelaxation : IDisposable
{
    private const double Tolerance = 1e-7;

    // Steps of the knapsack search that take about a second on a small computer.
    private const double StepsPerUnit = 300_000_000;

    private readonly BarJob _job;
    private readonly long _penalty;
    private readonly Solver _solver = Solver.CreateSolver("GLOP");
    private readonly Constraint[] _demand;
    private readonly Constraint[] _supply;
    private readonly List<(BarPattern Pattern, Variable Times)> _columns = [];
    private double _stepsLeft;

    public PatternRelaxation(BarJob job, long penalty, IEnumerable<BarPattern> start)
    {
        _job = job;
        _penalty = penalty;
        _demand = [.. job.Demand.Select(count => _solver.MakeConstraint(count, double.PositiveInfinity))];
        _supply = [.. job.Stock.Select(bar => _solver.MakeConstraint(double.NegativeInfinity, bar.Available))];
        _solver.Objective().SetMinimization();
        foreach (var row in _demand)
        {
            var uncut = _solver.MakeNumVar(0, double.PositiveInfinity, "");
            row.SetCoefficient(uncut, 1);
            _solver.Objective().SetCoefficient(uncut, penalty);
        }

        foreach (var pattern in start.DistinctBy(bar => (bar.Stock, string.Join(',', bar.Counts))))
        {
            Add(pattern);
        }
    }

    public IEnumerable<BarPattern> Patterns => _columns.Select(column => column.Pattern);

    /// <summary>Patterns and how often the relaxed job uses them.</summary>
    public IReadOnlyList<(BarPattern Pattern, double Times)> Solution { get; private set; } = [];

    /// <summary>Generates columns until none pays, or until the caller has had enough.</summary>
    /// <param name="work">How much work may be spent [units].</param>
    /// <param name="cancellationToken">Ends it early.</param>
    /// <returns>The best prices met, whose bound holds even when it was cut short.</returns>
    [Source("GilmoreGomory1961", "column generation with a knapsack problem for the next pattern")]
    public PatternPrices Solve(double work, CancellationToken cancellationToken)
    {
        _stepsLeft = work * StepsPerUnit;
        var best = new PatternPrices(new long[_demand.Length], new long[_supply.Length], 0);
        var pays = true;
        while (pays && _stepsLeft > 0)
        {
            if (_solver.Solve() != Solver.ResultStatus.OPTIMAL)
            {
                break;
            }

            Solution = [.. _columns.Select(column => (column.Pattern, column.Times.SolutionValue()))];
            if (cancellationToken.IsCancellationRequested)
            {
                break;
            }

            var prices = NextPrices(out pays);
            best = prices.Bound > best.Bound ? prices : best;
        }

        return best;
    }

    public void Dispose() => _solver.Dispose();

    private void Add(BarPattern pattern)
    {
        var times = _solver.MakeNumVar(0, double.PositiveInfinity, "");
        _solver.Objective().SetCoefficient(times, _job.Stock[pattern.Stock].Cost);
        _supply[pattern.Stock].SetCoefficient(times, 1);
        for (var i = 0; i < pattern.Counts.Length; i++)
        {
            if (pattern.Counts[i] > 0)
            {
                _demand[i].SetCoefficient(times, pattern.Counts[i]);
            }
        }

        _columns.Add((pattern, times));
    }

    /// <summary>Prices every stock's best pattern, adds those that pay, and turns the prices into a bound.</summary>
    private PatternPrices NextPrices(out bool pays)
    {
        var worth = _demand.Select(row => (long)Math.Floor(Math.Clamp(row.DualValue(), 0, _penalty) * PatternPrices.Scale)).ToArray();
        var scarcity = Array.ConvertAll(_supply, row => row.DualValue());
        var bestWorth = new long[_supply.Length];
        pays = false;
        for (var j = 0; j < _supply.Length; j++)
        {
            (bestWorth[j], var counts) = Best(j, worth);
            var reducedCost = _job.Stock[j].Cost - scarcity[j] - ((double)bestWorth[j] / PatternPrices.Scale);
            if (reducedCost < -Tolerance * Math.Max(1, _job.Stock[j].Cost) && !Known(j, counts))
            {
                Add(new BarPattern(j, counts));
                pays = true;
            }
        }

        // While columns still pay, the better bound is not worth a second search.
        return pays && _stepsLeft > 0 ? Stretched(worth, bestWorth) : Bounded(worth, bestWorth);
    }

    private (long Worth, int[] Counts) Best(int stock, long[] worth)
    {
        var (best, counts, steps) = BestPattern.Find(_job, _job.Stock[stock].Capacity, worth);
        _stepsLeft -= steps;
        return (best, counts);
    }

    private bool Known(int stock, int[] counts)
    {
        var pattern = new BarPattern(stock, counts);
        return _columns.Exists(column => column.Pattern.SameAs(pattern));
    }

    /// <summary>
    /// Piece prices with stock prices that make them dual feasible: μ = min(0, c − best worth), whatever the solver thought;
    /// or, the same prices scaled down until every pattern is worth its bar. The better of the two bounds counts.
    /// </summary>
    private PatternPrices Bounded(long[] worth, long[] bestWorth)
    {
        var scarce = Stretched(worth, bestWorth);
        var shrink = _job.Stock
            .Select((bar, j) => bar.Cost > 0 && bestWorth[j] > 0 ? (double)bar.Cost * PatternPrices.Scale / bestWorth[j] : 1)
            .Min();
        if (shrink >= 1)
        {
            return scarce;
        }

        // Rounding down keeps every pattern within its bar's price.
        var less = worth.Select(value => (long)Math.Floor(value * shrink * (1 - 1e-12))).ToArray();
        var dear = _job.Stock.Select((_, j) => Best(j, less).Worth).ToArray();
        var shrunk = Stretched(less, dear);
        return shrunk.Bound > scarce.Bound ? shrunk : scarce;
    }

    private PatternPrices Stretched(long[] worth, long[] bestWorth)
    {
        var stock = _job.Stock.Select((bar, j) => Math.Min(0, (bar.Cost * PatternPrices.Scale) - bestWorth[j])).ToArray();
        var bound = worth.Select((value, i) => (decimal)value * _job.Demand[i]).Sum()
            + stock.Select((value, j) => (decimal)value * _job.Stock[j].Available).Sum();
        return new PatternPrices(worth, stock, bound);
    }
}
