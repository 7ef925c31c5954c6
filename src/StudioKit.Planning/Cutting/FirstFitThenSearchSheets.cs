namespace StudioKit.Planning.Cutting;

/// <summary>Takes the quick first fit where it meets its own bound, and searches only where it does not.</summary>
/// <param name="search">The planner that searches.</param>
public sealed class FirstFitThenSearchSheets(ISheetCutPlanner search) : ISheetCutPlanner
{
    /// <inheritdoc/>
    public SheetCutPlan Plan(
        SheetCutRequest request, IProgress<CutProgress>? progress = null, CancellationToken cancellationToken = default)
    {
        var quick = new FirstFitSheetCutPlanner().Plan(request, progress, cancellationToken);
        return quick.Proof.ProvenOptimal ? quick : search.Plan(request, progress, cancellationToken);
    }
}
