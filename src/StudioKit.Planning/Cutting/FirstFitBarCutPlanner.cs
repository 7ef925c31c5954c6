using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Planning.Cutting;

/// <summary>A quick planner without a search: longest piece first, each into the first bar with room for it.</summary>
public sealed class FirstFitBarCutPlanner : IBarCutPlanner
{
    /// <summary>How its plans name their method.</summary>
    public const string Method = "first-fit decreasing, bounded by total length and by how many long pieces share a bar";

    /// <inheritdoc/>
    public BarCutPlan Plan(
        BarCutRequest request, IProgress<CutProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        var job = BarJob.From(request);
        return BarPlanBuilder.Build(job, FirstFitDecreasing.Best(job), job.QuickBound(), Method);
    }
}
