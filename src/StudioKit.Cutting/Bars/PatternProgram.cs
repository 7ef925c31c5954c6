using System.Globalization;
using Google.OrTools.Sat;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Picks how often each pattern is used, in whole numbers.</summary>
internal sealed class PatternProgram
{
    private readonly CoverJob _job;
    private readonly IReadOnlyList<BarPattern> _patterns;
    private readonly CpModel _model = new();
    private readonly IntVar[] _times;
    private readonly IntVar[] _uncut;

    private PatternProgram(CoverJob job, IReadOnlyList<BarPattern> patterns)
    {
        _job = job;
        _patterns = patterns;
        _times = [.. patterns.Select((pattern, p) => _model.NewIntVar(0, MostUseful(pattern), $"x{p}"))];
        _uncut = [.. job.Demand.Select((count, i) => _model.NewIntVar(0, count, $"u{i}"))];
    }

    private LinearExpr Cost => LinearExpr.WeightedSum(_times, [.. _patterns.Select(pattern => _job.Stock[pattern.Stock].Cost)]);

    /// <summary>Looks for the cheapest plan under a ceiling; the demand may be covered more than fully.</summary>
    public static PatternProgramResult Cheapest(
        CoverJob job, IReadOnlyList<BarPattern> patterns, long floor, long ceiling, double work, CancellationToken cancellationToken)
    {
        var program = new PatternProgram(job, patterns);
        var total = program.Cost + (job.Penalty * LinearExpr.Sum(program._uncut));
        program.Cover((made, wanted) => made >= wanted);
        program._model.AddLinearConstraint(total, floor, ceiling);
        program._model.Minimize(total);
        return program.Solve(work, cancellationToken);
    }

    /// <summary>Looks for the plan with fewest distinct patterns, then least stock, at no more than a given cost.</summary>
    public static PatternProgramResult FewestPatterns(
        CoverJob job, IReadOnlyList<BarPattern> patterns, IReadOnlyList<BarPattern> known, double work, CancellationToken cancellationToken)
    {
        var program = new PatternProgram(job, patterns);
        program.Cover((made, wanted) => made == wanted);
        program._model.Add(program.Cost <= known.Sum(bar => job.Stock[bar.Stock].Cost));
        program._model.Add(LinearExpr.Sum(program._uncut) == 0);
        var used = patterns.Select((_, p) => program._model.NewBoolVar($"y{p}")).ToArray();
        for (var p = 0; p < patterns.Count; p++)
        {
            var most = program.MostUseful(patterns[p]);
            program._model.Add(program._times[p] <= most * used[p]);
            var times = known.Count(patterns[p].SameAs);
            program._model.AddHint(program._times[p], times);
            program._model.AddHint(used[p], times > 0);
        }

        var stock = LinearExpr.WeightedSum(program._times, [.. patterns.Select(pattern => job.Stock[pattern.Stock].Size)]);
        var dearerThanAnyStock = job.Stock.Sum(row => row.Size * row.Available) + 1;
        program._model.Minimize((dearerThanAnyStock * LinearExpr.Sum(used)) + stock);
        return program.Solve(work, cancellationToken);
    }

    private long MostUseful(BarPattern pattern)
    {
        var most = pattern.Counts.Select((count, i) => count == 0 ? 0 : (_job.Demand[i] + count - 1) / count).Max();
        return Math.Min(most, _job.Stock[pattern.Stock].Available);
    }

    private void Cover(Func<LinearExpr, int, BoundedLinearExpression> relation)
    {
        for (var i = 0; i < _job.Demand.Length; i++)
        {
            var made = LinearExpr.WeightedSum(_times, [.. _patterns.Select(pattern => (long)pattern.Counts[i])]);
            _model.Add(relation(made + _uncut[i], _job.Demand[i]));
        }

        for (var j = 0; j < _job.Stock.Length; j++)
        {
            var taken = _times.Where((_, p) => _patterns[p].Stock == j);
            _model.Add(LinearExpr.Sum(taken) <= _job.Stock[j].Available);
        }
    }

    private PatternProgramResult Solve(double work, CancellationToken cancellationToken)
    {
        using var solver = new CpSolver();
        solver.StringParameters = string.Create(
            CultureInfo.InvariantCulture, $"num_workers:1, random_seed:1, max_deterministic_time:{work}");
        using var stop = cancellationToken.Register(solver.StopSearch);
        var status = solver.Solve(_model);
        var found = status is CpSolverStatus.Optimal or CpSolverStatus.Feasible;
        return new PatternProgramResult(
            found ? [.. _patterns.SelectMany((pattern, p) => Enumerable.Repeat(pattern, (int)solver.Value(_times[p])))] : null,
            status is CpSolverStatus.Optimal or CpSolverStatus.Infeasible);
    }
}
