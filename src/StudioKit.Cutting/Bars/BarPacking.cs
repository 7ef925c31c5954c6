using System.Globalization;
using Google.OrTools.Sat;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Asks whether all pieces of a job fit into given bars.</summary>
internal sealed class BarPacking
{
    private readonly BarJob _job;
    private readonly int[] _bars;
    private readonly CpModel _model = new();
    private readonly IntVar[][] _counts;

    private BarPacking(BarJob job, int[] numbers)
    {
        _job = job;
        _bars = [.. numbers.SelectMany((n, stock) => Enumerable.Repeat(stock, n))];
        _counts = [.. _bars.Select((stock, b) => job.Lengths
            .Select((length, i) => _model.NewIntVar(0, Math.Min(job.Demand[i], job.Stock[stock].Capacity / length), $"x{b}_{i}"))
            .ToArray())];
    }

    /// <summary>Asks.</summary>
    /// <param name="job">The job.</param>
    /// <param name="numbers">How many bars of each stock.</param>
    /// <param name="work">How much work the solver may spend [units].</param>
    /// <param name="cancellationToken">Ends the search early.</param>
    public static BarPackingResult Into(BarJob job, int[] numbers, double work, CancellationToken cancellationToken)
    {
        if (work <= 0 || cancellationToken.IsCancellationRequested)
        {
            return new BarPackingResult(null, ProvenImpossible: false, 0);
        }

        var packing = new BarPacking(job, numbers);
        packing.CutExactly();
        packing.Fill();
        return packing.Solve(work, cancellationToken);
    }

    private void CutExactly()
    {
        for (var i = 0; i < _job.Demand.Length; i++)
        {
            _model.Add(LinearExpr.Sum(_counts.Select(bar => bar[i])) == _job.Demand[i]);
        }
    }

    // Bars of one stock are alike, so they may be taken in the order of how much of each is used.
    private void Fill()
    {
        var slack = _bars.Sum(stock => (long)_job.Stock[stock].Capacity) - _job.Used(_job.Demand);
        long[] lengths = [.. _job.Lengths.Select(length => (long)length)];
        IntVar? before = null;
        for (var b = 0; b < _bars.Length; b++)
        {
            var capacity = _job.Stock[_bars[b]].Capacity;
            var used = _model.NewIntVar(Math.Max(0, capacity - slack), capacity, $"u{b}");
            _model.Add(LinearExpr.WeightedSum(_counts[b], lengths) == used);
            if (before is not null && _bars[b] == _bars[b - 1])
            {
                _model.Add(before >= used);
            }

            before = used;
        }
    }

    private BarPackingResult Solve(double work, CancellationToken cancellationToken)
    {
        using var solver = new CpSolver();
        solver.StringParameters = string.Create(
            CultureInfo.InvariantCulture, $"num_workers:1, catch_sigint_signal:false, random_seed:1, max_deterministic_time:{work}");
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        var found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        return new BarPackingResult(
            found ? [.. _bars.Select((stock, b) => new BarPattern(stock, [.. _counts[b].Select(count => (int)solver.Value(count))]))] : null,
            status == CpSolverStatus.Infeasible,
            solver.Response?.DeterministicTime ?? work);
    }
}
