using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>Several flashes that fire at one power: none of them may be asked for more than it has time for.</summary>
public static class FlashesInStep
{
    /// <summary>The first of them, kept to the power that all of them have time for.</summary>
    /// <param name="first">The flash that is solved for.</param>
    /// <param name="others">Those that fire along at its power.</param>
    /// <param name="limits">How long any of them may recycle and burn.</param>
    /// <returns>The first flash with its highest power drawn in.</returns>
    /// <exception cref="ArgumentNullException">A flash or the limits are missing.</exception>
    /// <remarks>A flash whose lowest power passes a limit keeps that power, as there is none lower to set.</remarks>
    [Source("Derived", "the least of the flashes' highest powers")]
    public static FlashCase Narrowed(FlashCase first, IReadOnlyList<FlashCase> others, SetUpLimits limits)
    {
        ArgumentNullException.ThrowIfNull(first);
        ArgumentNullException.ThrowIfNull(others);
        ArgumentNullException.ThrowIfNull(limits);
        if (others.Count == 0)
        {
            return first;
        }

        var highest = others.Prepend(first).Min(flash => PowerCap.Apply(flash, limits).HighestPower.Fraction);
        return first with { HighestPower = new FlashPower(Math.Max(highest, first.LowestPower.Fraction)) };
    }
}
