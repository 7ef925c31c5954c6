using StudioKit.Cutting.Bars;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Sheets;

/// <summary>One run of the search: the best plan and the best bound so far.</summary>
internal sealed class SheetSearch(SheetJob job, CutEffort effort, IProgress<CutProgress>? progress, CancellationToken cancellationToken)
{
    private const int ShuffledRuns = 200;
    private const int Seed = 1;

    // Some ten million joins of layouts take about a second.
    private const long JoinsPerUnit = 10_000_000;

    private readonly CoverJob _cover = CoverJob.From(job);
    private readonly long _penalty = CoverJob.From(job).Penalty;
    private List<SheetBin> _best = [];
    private long _bestCost = long.MaxValue;
    private long _bound;

    public IReadOnlyList<SheetBin> Sheets => _best;

    /// <summary>Bound on the cost of a plan that cuts every piece; the quick one where there is no such plan.</summary>
    public long CostBound => _bound < _penalty ? _bound : job.QuickBound();

    public string Method { get; private set; } = "first fit on shelves met its bound";

    private bool Open => _bound < _bestCost && !cancellationToken.IsCancellationRequested;

    public void Run()
    {
        Offer(ShelfFirstFit.Best(job), "first fit");
        Raise(job.QuickBound(), "bounds");
        if (Open && job.Stock.Length > 0)
        {
            Fill();
        }

        if (Open && job.Stock.Length > 0)
        {
            Close();
        }
    }

    private void Fill()
    {
        Method = "greedy filling of regions met its bound";
        var random = new Random(Seed);
        for (var run = 0; run < ShuffledRuns && Open; run++)
        {
            foreach (var preference in ShelfFirstFit.Preferences(job))
            {
                Offer(ShelfFirstFit.Swapped(job, GreedyFill.Run(job, preference, run == 0 ? null : random)), "greedy filling");
            }
        }
    }

    /// <summary>Decides over all sets of pieces that a sheet can hold; where those are too many, over the ones listed.</summary>
    private void Close()
    {
        Method = "greedy filling of regions, bounded by total area";
        var sets = PackableSets.List(job, (long)(effort.ProofWork * JoinsPerUnit), cancellationToken);
        if (sets is null)
        {
            return;
        }

        var patterns = Patterns(sets).ToArray();
        var result = PatternChoice.Cheapest(_cover, patterns, _bound, _bestCost - 1, effort.ProofWork, cancellationToken);
        if (result.Bars is not null)
        {
            Offer(Laid(sets, result.Bars), "integer program");
        }

        if (sets.Complete)
        {
            Method = "integer program over all sets of pieces that a sheet holds";
            Raise(result.Exhausted ? _bestCost : Math.Min(result.Bound, _bestCost), "integer program");
        }
    }

    /// <summary>Sets that would not fit any more with one more piece, for every stock.</summary>
    private IEnumerable<BarPattern> Patterns(PackableSets sets) =>
        from stock in Enumerable.Range(0, job.Stock.Length)
        from set in sets.Sets
        where set.On(job.Stock[stock]) is not null && !Grows(sets, set, job.Stock[stock])
        select new BarPattern(stock, set.Counts);

    private bool Grows(PackableSets sets, PackableSet set, SheetStock sheet)
    {
        int[] counts = [.. set.Counts];
        for (var i = 0; i < counts.Length; i++)
        {
            counts[i]++;
            var grows = counts[i] <= job.Kinds[i].Demand && sets.Find(counts)?.On(sheet) is not null;
            counts[i]--;
            if (grows)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Takes out pieces that nobody asked for and lays the rest on its sheet; part of a set always fits where the set does.</summary>
    private List<SheetBin> Laid(PackableSets sets, List<BarPattern> patterns)
    {
        var missing = job.Kinds.Select(kind => kind.Demand).ToArray();
        var bins = new List<SheetBin>();
        foreach (var pattern in patterns)
        {
            int[] counts = [.. pattern.Counts.Select((count, i) => Math.Min(count, missing[i]))];
            if (counts.Sum() > 0)
            {
                bins.Add(new SheetBin(pattern.Stock, sets.Find(counts)!.On(job.Stock[pattern.Stock])!));
                missing = [.. missing.Select((count, i) => count - counts[i])];
            }
        }

        return ShelfFirstFit.Swapped(job, bins);
    }

    private void Offer(List<SheetBin> bins, string phase)
    {
        var missing = job.Kinds.Sum(kind => kind.Demand) - bins.Sum(bin => ShelfFirstFit.PieceCount(bin.Layout));
        var cost = bins.Sum(bin => job.Stock[bin.Stock].Cost) + (_penalty * missing);
        if (cost < _bestCost)
        {
            (_best, _bestCost) = (bins, cost);
            Report(phase);
        }
    }

    private void Raise(long bound, string phase)
    {
        if (bound > _bound)
        {
            _bound = bound;
            Report(phase);
        }
    }

    private void Report(string phase) => progress?.Report(
        new CutProgress(phase, _bestCost < _penalty ? _bestCost * job.Prices.Tick : null, _bound * job.Prices.Tick));
}
