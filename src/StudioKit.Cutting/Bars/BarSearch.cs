using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>One run of the search: the best plan and the best bound so far, and the steps that bring them together.</summary>
internal sealed class BarSearch(BarJob job, CutEffort effort, IProgress<CutProgress>? progress, CancellationToken cancellationToken)
{
    private const int LongestCatalogue = 20_000;
    private const int LongestTidyingCatalogue = 2_000;
    private const int MostPiecesOfSmallJob = 100;

    // Steps of trying all, or of looking for patterns that merge, that take about a second.
    private const double StepsPerUnit = 100_000_000;

    private readonly CoverJob _cover = CoverJob.From(job);
    private readonly long _penalty = CoverJob.From(job).Penalty;
    private readonly Lazy<PiecePrices> _prices = new(() => PiecePrices.Of(job));
    private IReadOnlyList<BarPattern> _best = [];
    private bool _solverUsed;
    private long _bestCost = long.MaxValue;

    public IReadOnlyList<BarPattern> Bars => _best;

    /// <summary>Bound on the cost of a plan that cuts every piece; the quick one where there is no such plan.</summary>
    public long CostBound => Bound < _penalty ? Bound : job.QuickBound();

    private long Bound { get; set; }

    public string Method { get; private set; } = "first-fit decreasing met its bound";

    private bool Open => Bound < _bestCost && !cancellationToken.IsCancellationRequested;

    private bool Small => job.Demand.Sum() <= MostPiecesOfSmallJob;

    private bool AllCut => _bestCost < _penalty;

    public void Run()
    {
        Offer(FirstFitDecreasing.Best(job), "first fit");
        Raise(job.QuickBound(), "bounds");
        if (Open && AllCut && Small)
        {
            Decide();
        }

        if (Open && job.Stock.Length > 0)
        {
            Relax();
        }

        if (AllCut && effort.TidyingWork > 0 && !cancellationToken.IsCancellationRequested)
        {
            Tidy();
        }
    }

    /// <summary>Settles a small job by asking for ever cheaper plans until there is none.</summary>
    private void Decide()
    {
        if (DirectPacking.For(job, _prices.Value, _bestCost - 1, (long)(effort.DirectWork * StepsPerUnit)) is not { } packing)
        {
            return;
        }

        Method = "trying all ways that could cost less";
        while (Open)
        {
            var answer = packing.Within(_bestCost - 1, cancellationToken);
            if (answer.Bars is not null)
            {
                Offer(answer.Bars, "trying all");
            }
            else if (answer.ProvenImpossible)
            {
                Raise(_bestCost, "trying all");
            }
            else
            {
                return;
            }
        }
    }

    private void Relax()
    {
        _solverUsed = true;
        using var relaxation = new PatternRelaxation(job, _penalty, _best);
        var prices = relaxation.Solve(effort.ProofWork / 2, cancellationToken);
        Method = "column generation";
        Raise(prices.WholeBound, "column generation");
        foreach (var rounded in PatternRounding.Plans(job, relaxation.Solution))
        {
            Offer(rounded, "rounding");
        }

        if (Open)
        {
            Close(prices, [.. relaxation.Patterns]);
        }
    }

    /// <summary>
    /// Decides over the patterns thought of so far, which is quick and brings the cost down; then over all that could still help,
    /// where they are not too many.
    /// </summary>
    private void Close(PatternPrices prices, List<BarPattern> generated)
    {
        Method = "column generation and an integer program over its patterns";
        Choose(generated, effort.ProofWork / 2);
        if (!Open)
        {
            return;
        }

        if (AllCut && StockNumbers.Cheapest(job, Bound, _bestCost - 1, effort.ProofWork, cancellationToken) is { } settled)
        {
            Method = "column generation, then every number of bars between bound and best, cheapest first";
            Take(settled, "numbers of bars");
        }

        if (!Open)
        {
            return;
        }

        var slack = ((_bestCost - 1m) * PatternPrices.Scale) - prices.Bound;
        if (PatternCatalogue.List(job, prices, slack, fullOnly: true, LongestCatalogue) is { } all)
        {
            Method = "column generation and an integer program over all patterns that could help";
            var result = Choose(all, effort.ProofWork);
            Raise(result.Exhausted ? _bestCost : Math.Min(result.Bound, _bestCost), "integer program");
        }
    }

    private void Take(PatternProgramResult result, string phase)
    {
        if (result.Bars is not null)
        {
            Offer(result.Bars, phase);
        }

        Raise(Math.Min(result.Bound, _bestCost), phase);
    }

    private PatternProgramResult Choose(List<BarPattern> patterns, double work)
    {
        var result = PatternChoice.Cheapest(_cover, patterns, Bound, _bestCost - 1, work, cancellationToken);
        if (result.Bars is not null)
        {
            Offer(result.Bars, "integer program");
        }

        return result;
    }

    private void Tidy()
    {
        if (!_solverUsed && Small)
        {
            _best = PatternMerging.Merged(job, _prices.Value, _best, (long)(effort.TidyingWork * StepsPerUnit), cancellationToken);
            return;
        }

        var free = new PatternPrices(new long[job.Lengths.Length], new long[job.Stock.Length], 0);
        var all = PatternCatalogue.List(job, free, decimal.MaxValue / 2, fullOnly: false, LongestTidyingCatalogue);
        if (all is not null)
        {
            _best = PatternTidying.Tidied(_cover, all, _best, effort.TidyingWork, cancellationToken);
        }
    }

    private void Offer(IReadOnlyList<BarPattern> bars, string phase)
    {
        var plan = PatternTrimming.Exact(job, bars);
        var cost = plan.Sum(bar => job.Stock[bar.Stock].Cost)
            + (_penalty * (job.Demand.Sum() - plan.Sum(bar => bar.Counts.Sum())));
        if (cost < _bestCost)
        {
            (_best, _bestCost) = (plan, cost);
            Report(phase);
        }
    }

    private void Raise(long bound, string phase)
    {
        if (bound > Bound)
        {
            Bound = bound;
            Report(phase);
        }
    }

    private void Report(string phase) => progress?.Report(
        new CutProgress(phase, AllCut ? _bestCost * job.Prices.Tick : null, Bound * job.Prices.Tick));
}
