using StudioKit.Physics;
using UnitsNet;

namespace StudioKit.Planning.Cutting;

/// <summary>Plans the same job of bars only once.</summary>
/// <param name="planner">Who plans it.</param>
internal sealed class KeptBarCuts(IBarCutPlanner planner) : IBarCutPlanner
{
    private readonly Kept<(ValueList<BarPiece> Pieces, ValueList<StockBar> Stock, Length Kerf, Length Trim, Length Shortest), BarCutPlan> _plans = new();

    /// <inheritdoc/>
    public BarCutPlan Plan(BarCutRequest request, IProgress<CutProgress>? progress = null, CancellationToken cancellationToken = default) => _plans.Get(
        ([.. request.Pieces], [.. request.Stock], request.Kerf, request.Trim, request.ShortestKeptOffcut),
        _ => planner.Plan(request, progress, cancellationToken));
}
