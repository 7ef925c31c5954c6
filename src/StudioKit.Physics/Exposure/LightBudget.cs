using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>
/// The stop-by-stop account from a flash's guide number to the exposure at the sensor; its lines add up to the answer.
/// </summary>
/// <param name="Lines">Every gain and loss on its own line, in the order the light meets them.</param>
public sealed record LightBudget(IReadOnlyList<LightBudgetLine> Lines)
{
    /// <summary>Sum of the lines.</summary>
    public Stops Total => new(Lines.Sum(line => line.Stops.Value));

    /// <summary>One standard deviation of the sum, the lines being independent.</summary>
    /// <returns>√Σσ² [1].</returns>
    [Source("CommonPractice", "independent errors combine in quadrature")]
    public Stops Uncertainty => new(Math.Sqrt(Lines.Sum(line => line.Uncertainty.Value * line.Uncertainty.Value)));

    /// <summary>
    /// How far either side of the start the first bracket goes: one standard deviation in clicks of the flash's dial, at least one.
    /// </summary>
    /// <param name="step">Step of the flash's power dial.</param>
    /// <returns>The bracket, a positive number of stops [1].</returns>
    [Source("CommonPractice", "bracketing in clicks of the dial")]
    public Stops Bracket(PowerStep step) =>
        new(Math.Max(1, Math.Round(Uncertainty.Value * step.ClicksPerStop(), MidpointRounding.AwayFromZero)) / step.ClicksPerStop());
}
