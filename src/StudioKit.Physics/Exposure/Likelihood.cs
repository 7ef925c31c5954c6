using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>How likely a level lies where it should, when it is known give or take an amount.</summary>
/// <remarks>Errors in stops are taken as normal, since many small independent ones add: guide number, distance, sheet, lens, clip point.</remarks>
public static class Likelihood
{
    /// <summary>Probability that a level really lies above a limit.</summary>
    /// <param name="level">The level expected.</param>
    /// <param name="limit">The limit.</param>
    /// <param name="uncertainty">One standard deviation; 0 stops or more.</param>
    /// <returns>Φ((level − limit)/σ) [1]; 0 to 1; without uncertainty 1 at or above the limit and 0 under it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is negative.</exception>
    [Source("Gum", "6.2.1 and G.1.2: an interval under a normal distribution")]
    public static double Above(Stops level, Stops limit, Stops uncertainty)
    {
        var sigma = Guard.NonNegative(uncertainty.Value, nameof(uncertainty));
        var over = level.Value - limit.Value;
        return sigma > 0 ? NormalDistribution.Below(over / sigma) : over >= 0 ? 1 : 0;
    }

    /// <summary>Probability that a change common to a range of levels keeps its lowest above one limit and its highest under another.</summary>
    /// <param name="lowest">Lowest level expected.</param>
    /// <param name="highest">Highest level expected; not under the lowest.</param>
    /// <param name="floor">Limit that the lowest is to reach.</param>
    /// <param name="ceiling">Limit that the highest is not to pass.</param>
    /// <param name="uncertainty">One standard deviation; 0 stops or more.</param>
    /// <returns>Φ((ceiling − highest)/σ) − Φ((floor − lowest)/σ), at least 0 [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is negative.</exception>
    [Source("Gum", "6.2.1 and G.1.2: an interval under a normal distribution")]
    public static double Between(Stops lowest, Stops highest, Stops floor, Stops ceiling, Stops uncertainty) =>
        Math.Max(0, Above(lowest, floor, uncertainty) + Above(ceiling, highest, uncertainty) - 1);
}
