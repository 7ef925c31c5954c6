using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>Light of several sources on one spot: luminous exposures add, whatever they come from.</summary>
public static class CombinedLight
{
    /// <summary>Level of all sources together.</summary>
    /// <param name="levels">Level of each source against any common reference; at least one.</param>
    /// <returns>log₂ Σ2^level, against the same reference.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The list is empty.</exception>
    [Source("Derived", "superposition of light")]
    public static Stops Sum(params IReadOnlyList<Stops> levels)
    {
        ArgumentNullException.ThrowIfNull(levels);
        ArgumentOutOfRangeException.ThrowIfZero(levels.Count, nameof(levels));

        // Counted from the brightest, so that no power of two overflows.
        var brightest = levels.Max(level => level.Value);
        return new Stops(brightest + Math.Log2(levels.Sum(level => Math.Pow(2, level.Value - brightest))));
    }

    /// <summary>Level that a source must add to another so that both come to a whole.</summary>
    /// <param name="there">Level of what is there already against that whole.</param>
    /// <param name="least">Level below which nothing is added; what is there may be all of it, or more.</param>
    /// <returns>log₂(1 − 2^level), no lower than the least.</returns>
    [Source("Derived", "superposition of light")]
    public static Stops Missing(Stops there, Stops least) =>
        there.Value < 0 ? new Stops(Math.Max(least.Value, Math.Log2(1 - there.Ratio))) : least;

    /// <summary>Share of the total that one source gives.</summary>
    /// <param name="difference">Its level against that of all the others together.</param>
    /// <returns>2^d/(1 + 2^d) [1]; 0 to 1.</returns>
    [Source("Derived", "superposition of light")]
    public static double ShareOf(Stops difference) => 1 / (1 + Math.Pow(2, -difference.Value));
}
