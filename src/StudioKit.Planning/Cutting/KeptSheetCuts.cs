using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>Plans the same job of sheets only once.</summary>
/// <param name="planner">Who plans it.</param>
internal sealed class KeptSheetCuts(ISheetCutPlanner planner) : ISheetCutPlanner
{
    private readonly Kept<(ValueList<SheetPiece> Pieces, ValueList<StockSheet> Stock, Length Kerf, Length Trim, Length Shortest), SheetCutPlan> _plans = new();

    /// <inheritdoc/>
    public SheetCutPlan Plan(SheetCutRequest request, IProgress<CutProgress>? progress = null, CancellationToken cancellationToken = default) => _plans.Get(
        ([.. request.Pieces], [.. request.Stock], request.Kerf, request.Trim, request.ShortestKeptSide),
        _ => planner.Plan(request, progress, cancellationToken));
}
