namespace StudioKit.Physics.Optics;

/// <summary>Magnifications that a stack reaches by the lens's own focusing.</summary>
/// <param name="Smallest">Smallest magnification [1]; 0 when it focuses at infinity.</param>
/// <param name="Largest">Largest magnification [1]; 0 or below when it comes to no focus on a real subject.</param>
public readonly record struct MagnificationRange(double Smallest, double Largest)
{
    // A wanted 1:2 must not fail on the last bit of a lens that reaches exactly 1:2.
    private const double Slack = 1e-9;

    /// <summary>Whether a magnification lies in the range.</summary>
    /// <param name="magnification">The magnification asked for.</param>
    public bool Covers(Magnification magnification) =>
        magnification.Value >= Smallest * (1 - Slack) && magnification.Value <= Largest * (1 + Slack);
}
