using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Previewing;

/// <summary>A place of the panel as one framing has it.</summary>
/// <param name="Framing">Name of the framing.</param>
/// <param name="Views">Each camera angle.</param>
/// <param name="Budget">The account from guide number to this place, at the angle that sees it darkest.</param>
public sealed record PointInFraming(string Framing, IReadOnlyList<PointInView> Views, LightBudget Budget)
{
    /// <summary>Whether any camera angle sees it.</summary>
    public bool IsSeen => Views.Any(view => view.IsSeen);

    /// <summary>The margin that the account comes to.</summary>
    public Stops Margin => Budget.Total;
}
