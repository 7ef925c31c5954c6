using Google.OrTools.LinearSolver;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>Picks how often each pattern is used for the least cost: an integer program for branch and cut.</summary>
/// <remarks>
/// The number taken of each stock is a variable of its own, so that the solver branches on it first: cost depends on nothing else,
/// and with the numbers settled the relaxation soon shows whether they suffice.
/// </remarks>
internal sealed class PatternChoice : IDisposable
{
    // A node over twice as many patterns takes about twice as long.
    private const double PatternNodesPerUnit = 500_000;

    // The clock is only there so that a person is never kept waiting without end.
    private const double SecondsPerUnit = 4;

    // The solver's bound is a floating-point number; a whole tick must not be gained by its noise.
    private const double Noise = 1e-6;

    private readonly CoverJob _job;
    private readonly IReadOnlyList<BarPattern> _patterns;
    private readonly Solver _solver = Solver.CreateSolver("SCIP");
    private readonly Variable[] _times;
    private readonly Constraint _cost;

    private PatternChoice(CoverJob job, IReadOnlyList<BarPattern> patterns, long floor, long ceiling)
    {
        _job = job;
        _patterns = patterns;
        _times = [.. patterns.Select(pattern => _solver.MakeIntVar(0, job.MostUseful(pattern), ""))];
        _cost = _solver.MakeConstraint(floor, ceiling);
        _solver.Objective().SetMinimization();
    }

    /// <summary>Looks for the cheapest plan between a floor and a ceiling; the demand may be covered more than fully.</summary>
    /// <param name="job">The job.</param>
    /// <param name="patterns">Patterns it may use.</param>
    /// <param name="floor">No plan costs less [ticks].</param>
    /// <param name="ceiling">No plan that costs more is wanted [ticks]; where it reaches the penalty, pieces may be left uncut.</param>
    /// <param name="work">How much work the solver may spend [units].</param>
    /// <param name="cancellationToken">Ends the search early.</param>
    public static PatternProgramResult Cheapest(
        CoverJob job, IReadOnlyList<BarPattern> patterns, long floor, long ceiling, double work, CancellationToken cancellationToken)
    {
        using var choice = new PatternChoice(job, patterns, floor, ceiling);
        choice.Cover(ceiling >= job.Penalty);
        choice.Count();
        return choice.Solve(work, cancellationToken);
    }

    public void Dispose() => _solver.Dispose();

    private void Cover(bool mayLeaveUncut)
    {
        for (var i = 0; i < _job.Demand.Length; i++)
        {
            var made = _solver.MakeConstraint(_job.Demand[i], double.PositiveInfinity);
            for (var p = 0; p < _times.Length; p++)
            {
                if (_patterns[p].Counts[i] > 0)
                {
                    made.SetCoefficient(_times[p], _patterns[p].Counts[i]);
                }
            }

            if (mayLeaveUncut)
            {
                var uncut = _solver.MakeIntVar(0, _job.Demand[i], "");
                made.SetCoefficient(uncut, 1);
                Charge(uncut, _job.Penalty);
            }
        }
    }

    private void Count()
    {
        for (var j = 0; j < _job.Stock.Length; j++)
        {
            var taken = _solver.MakeIntVar(0, _job.Stock[j].Available, "");
            var sum = _solver.MakeConstraint(0, 0);
            sum.SetCoefficient(taken, -1);
            for (var p = 0; p < _times.Length; p++)
            {
                if (_patterns[p].Stock == j)
                {
                    sum.SetCoefficient(_times[p], 1);
                }
            }

            Charge(taken, _job.Stock[j].Cost);
        }
    }

    private void Charge(Variable variable, long cost)
    {
        _cost.SetCoefficient(variable, cost);
        _solver.Objective().SetCoefficient(variable, cost);
    }

    private PatternProgramResult Solve(double work, CancellationToken cancellationToken)
    {
        // An interrupt that comes before the solver is at work would be lost on it.
        if (cancellationToken.IsCancellationRequested)
        {
            return new PatternProgramResult(null, false, (long)_cost.Lb());
        }

        var nodes = Math.Max(1, (long)(work * PatternNodesPerUnit / Math.Max(1, _patterns.Count)));
        _solver.SetSolverSpecificParametersAsString(FormattableString.Invariant($"limits/totalnodes = {nodes}\nmisc/catchctrlc = FALSE\n"));
        _solver.SetTimeLimit((long)(work * SecondsPerUnit * 1000));
        using var stop = cancellationToken.Register(() => _solver.InterruptSolve());
        var status = _solver.Solve();
        var found = status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.FEASIBLE;
        long Bound() => status == Solver.ResultStatus.INFEASIBLE
            ? (long)_cost.Ub() + 1
            : (long)Math.Clamp(Math.Ceiling(_solver.Objective().BestBound() - Noise), _cost.Lb(), _cost.Ub() + 1);
        return new PatternProgramResult(
            found ? [.. _patterns.SelectMany((pattern, p) => Enumerable.Repeat(pattern, (int)Math.Round(_times[p].SolutionValue())))] : null,
            status is Solver.ResultStatus.OPTIMAL or Solver.ResultStatus.INFEASIBLE,
            Bound());
    }
}
