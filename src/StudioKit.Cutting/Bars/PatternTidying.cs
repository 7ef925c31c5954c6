using System.Globalization;
using Google.OrTools.Sat;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Looks among plans of equal cost for the one with fewest distinct patterns, then least stock.</summary>
internal sealed class PatternTidying
{
    private readonly CoverJob _job;
    private readonly IReadOnlyList<BarPattern> _patterns;
    private readonly CpModel _model = new();
    private readonly IntVar[] _times;
    private readonly BoolVar[] _used;

    private PatternTidying(CoverJob job, IReadOnlyList<BarPattern> patterns, IReadOnlyList<BarPattern> known)
    {
        _job = job;
        _patterns = patterns;
        _times = [.. patterns.Select((pattern, p) => _model.NewIntVar(0, job.MostUseful(pattern), $"x{p}"))];
        _used = [.. patterns.Select((_, p) => _model.NewBoolVar($"y{p}"))];
        for (var p = 0; p < patterns.Count; p++)
        {
            var times = known.Count(patterns[p].SameAs);
            _model.Add(_times[p] <= job.MostUseful(patterns[p]) * _used[p]);
            _model.AddHint(_times[p], times);
            _model.AddHint(_used[p], times > 0);
        }
    }

    /// <summary>Looks for it.</summary>
    /// <param name="job">The job.</param>
    /// <param name="patterns">All patterns, those with room for one more piece included.</param>
    /// <param name="known">A whole plan, which sets the cost.</param>
    /// <param name="work">How much work the solver may spend [units].</param>
    /// <param name="cancellationToken">Ends the search early.</param>
    /// <returns>The tidiest plan found, the known one at worst.</returns>
    public static IReadOnlyList<BarPattern> Tidied(
        CoverJob job, IReadOnlyList<BarPattern> patterns, IReadOnlyList<BarPattern> known, double work, CancellationToken cancellationToken)
    {
        var tidying = new PatternTidying(job, patterns, known);
        tidying.CutExactly();
        tidying.Spend(known.Sum(bar => job.Stock[bar.Stock].Cost));
        return tidying.Solve(work, cancellationToken) ?? known;
    }

    private void CutExactly()
    {
        for (var i = 0; i < _job.Demand.Length; i++)
        {
            _model.Add(LinearExpr.WeightedSum(_times, [.. _patterns.Select(pattern => (long)pattern.Counts[i])]) == _job.Demand[i]);
        }
    }

    private void Spend(long cost)
    {
        for (var j = 0; j < _job.Stock.Length; j++)
        {
            _model.Add(LinearExpr.Sum(_times.Where((_, p) => _patterns[p].Stock == j)) <= _job.Stock[j].Available);
        }

        _model.Add(LinearExpr.WeightedSum(_times, [.. _patterns.Select(pattern => _job.Stock[pattern.Stock].Cost)]) <= cost);
        var stock = LinearExpr.WeightedSum(_times, [.. _patterns.Select(pattern => _job.Stock[pattern.Stock].Size)]);
        var moreThanAnyStock = _job.Stock.Sum(row => row.Size * row.Available) + 1;
        _model.Minimize((moreThanAnyStock * LinearExpr.Sum(_used)) + stock);
    }

    private List<BarPattern>? Solve(double work, CancellationToken cancellationToken)
    {
        using var solver = new CpSolver();
        solver.StringParameters = string.Create(
            CultureInfo.InvariantCulture, $"num_workers:1, catch_sigint_signal:false, random_seed:1, max_deterministic_time:{work}");
        using var stop = cancellationToken.Register(solver.StopSearch);
        return solver.Solve(_model) is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? [.. _patterns.SelectMany((pattern, p) => Enumerable.Repeat(pattern, (int)solver.Value(_times[p])))]
            : null;
    }
}
