using StudioKit.Planning.Cutting;

namespace StudioKit.Planning;

/// <summary>Parts of the planning that a caller may put a stronger one in place of.</summary>
public sealed record PlanningServices
{
    /// <summary>Plans pipe cuts.</summary>
    public IBarCutPlanner Bars { get; init; } = new FirstFitBarCutPlanner();

    /// <summary>Plans sheet cuts.</summary>
    public ISheetCutPlanner Sheets { get; init; } = new FirstFitSheetCutPlanner();
}
