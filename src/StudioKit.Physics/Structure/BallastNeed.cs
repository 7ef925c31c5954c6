using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>Ballast that keeps a studio in its place, in whole tenths of a kilogram.</summary>
/// <param name="UnderMiddle">Mass to hang under the middle, over and above what hangs there; at least 0.1 kg.</param>
/// <param name="OnWindwardFeet">Mass that would do as well on the windward feet; none where only the whole weight counts.</param>
/// <param name="Hung">Mass that hangs under the middle already.</param>
public sealed record BallastNeed(Mass UnderMiddle, Mass? OnWindwardFeet, Mass Hung)
{
    private const double StepsPerKilogram = 10;

    /// <summary>The ballast that covers what is missing.</summary>
    /// <param name="underMiddle">Mass missing under the middle; ≥ 0.</param>
    /// <param name="onWindwardFeet">Mass missing on the windward feet; none where only the whole weight counts.</param>
    /// <param name="hung">Mass that hangs there already; ≥ 0.</param>
    /// <remarks>Rounded up, so that what the person hangs suffices and nobody is told to hang nothing.</remarks>
    internal static BallastNeed Covering(Mass underMiddle, Mass? onWindwardFeet, Mass hung) =>
        new(Up(underMiddle), onWindwardFeet is { } feet ? Up(feet) : null, hung);

    private static Mass Up(Mass mass) =>
        Mass.FromKilograms(Math.Max(1, Math.Ceiling((mass.Kilograms * StepsPerKilogram) - 1e-6)) / StepsPerKilogram);
}
