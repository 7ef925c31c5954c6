namespace StudioKit.Physics.Exposure;

/// <summary>The stop-by-stop account from a flash's guide number to the exposure at the sensor.</summary>
/// <param name="Lines">Every gain and loss on its own line, in the order the light meets them.</param>
public sealed record LightBudget(IReadOnlyList<LightBudgetLine> Lines)
{
    /// <summary>What the lines come to.</summary>
    public Stops Total => new(Lines.Sum(line => line.Stops.Value));
}
