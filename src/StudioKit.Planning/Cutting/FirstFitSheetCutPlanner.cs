using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Planning.Cutting;

/// <summary>A quick planner without a search: highest piece first, each onto the first shelf with room for it.</summary>
public sealed class FirstFitSheetCutPlanner : ISheetCutPlanner
{
    /// <summary>How its plans name their method.</summary>
    public const string Method = "first-fit decreasing on shelves, bounded by total area";

    /// <inheritdoc/>
    public SheetCutPlan Plan(
        SheetCutRequest request, IProgress<CutProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        var job = SheetJob.From(request);
        return SheetPlanBuilder.Build(job, ShelfFirstFit.Best(job), job.QuickBound(), Method);
    }
}
