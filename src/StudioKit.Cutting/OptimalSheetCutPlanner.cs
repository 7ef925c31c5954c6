using StudioKit.Cutting.Sheets;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting;

/// <summary>Plans sheets at least cost with a proof where the sets of pieces are few enough to list, or with an honest gap.</summary>
public sealed class OptimalSheetCutPlanner(CutEffort? effort = null) : ISheetCutPlanner
{
    /// <inheritdoc/>
    public SheetCutPlan Plan(
        SheetCutRequest request, IProgress<CutProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        var job = SheetJob.From(request);
        var search = new SheetSearch(job, effort ?? CutEffort.Usual, progress, cancellationToken);
        search.Run();
        return SheetPlanBuilder.Build(job, search.Sheets, search.CostBound, search.Method);
    }
}
