using StudioKit.Cutting.Bars;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting;

/// <summary>Plans bars at least cost with a proof, or with an honest gap where the work allowed does not suffice.</summary>
/// <remarks>Among plans of equal cost it prefers fewer distinct patterns, then less stock.</remarks>
public sealed class OptimalBarCutPlanner(CutEffort? effort = null) : IBarCutPlanner
{
    /// <inheritdoc/>
    public BarCutPlan Plan(
        BarCutRequest request, IProgress<CutProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        var job = BarJob.From(request);
        var search = new BarSearch(job, effort ?? CutEffort.Usual, progress, cancellationToken);
        search.Run();
        return BarPlanBuilder.Build(job, search.Bars, search.CostBound, search.Method);
    }
}
