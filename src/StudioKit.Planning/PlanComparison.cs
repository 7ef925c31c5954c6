using UnitsNet;

namespace StudioKit.Planning;

/// <summary>Two kits side by side.</summary>
/// <param name="First">Plan of the first kit.</param>
/// <param name="Second">Plan of the second kit.</param>
public sealed record PlanComparison(Plan First, Plan Second)
{
    /// <summary>How much heavier the second kit is; negative where it is lighter.</summary>
    public Mass MassDifference => Second.Pack.Total - First.Pack.Total;
}
