using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>Whether a level that was measured, and is known give or take an amount, lies within a tolerance.</summary>
/// <remarks>
/// A level is accepted where it conforms with a probability of 95 % or more, and refused where it does with 5 % or less; in between the measurement
/// decides nothing, which is no fault of what was measured. So a guard band of some 1.64 standard deviations lies inside each limit, and one outside.
/// </remarks>
public static class Conformity
{
    /// <summary>Probability from which on a level counts as within, and its complement up to which it counts as outside [1].</summary>
    public const double Proven = 0.95;

    // Halves the tolerance into steps that nobody can set.
    private const int Halvings = 50;

    /// <summary>Probability that a level lies within a tolerance interval.</summary>
    /// <param name="level">The level measured.</param>
    /// <param name="lower">Lower limit of the tolerance.</param>
    /// <param name="upper">Upper limit of the tolerance; not under the lower one.</param>
    /// <param name="uncertainty">One standard deviation u; 0 stops or more.</param>
    /// <returns>Φ((upper − level)/u) − Φ((lower − level)/u) [1]; 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The uncertainty is negative, or the limits are in the wrong order.</exception>
    [Source("Jcgm106", "7.4: two-sided tolerance interval with a normal distribution")]
    public static double Probability(Stops level, Stops lower, Stops upper, Stops uncertainty)
    {
        Guard.NonNegative(upper.Value - lower.Value, nameof(upper));
        return Likelihood.Between(level, level, lower, upper, uncertainty);
    }

    /// <summary>What a probability of conforming decides.</summary>
    /// <param name="probability">The probability [1]; 0 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside its range.</exception>
    [Source("Iso14253", "5: conformity and non-conformity proven at 95 %, neither in the zone of uncertainty")]
    public static ConformityDecision Decide(double probability) => Guard.Between(probability, 0, 1) switch
    {
        >= Proven => ConformityDecision.Within,
        <= 1 - Proven => ConformityDecision.Outside,
        _ => ConformityDecision.NotDecided,
    };

    /// <summary>Furthest from the middle of a tolerance that a level may be measured and still counts as within.</summary>
    /// <param name="tolerance">Half the width T of the tolerance; 0 stops or more.</param>
    /// <param name="uncertainty">One standard deviation u; 0 stops or more.</param>
    /// <returns>T less the guard band; none where the uncertainty is too large for any level to count as within.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is negative.</exception>
    [Source("Jcgm106", "8.3.2: guarded acceptance, the band from the probability that is asked for")]
    public static Stops? AcceptedTo(Stops tolerance, Stops uncertainty)
    {
        var (none, all) = (0.0, Guard.NonNegative(tolerance.Value, nameof(tolerance)));
        if (!IsWithin(none) || IsWithin(all))
        {
            return IsWithin(all) ? tolerance : null;
        }

        for (var i = 0; i < Halvings; i++)
        {
            var middle = (none + all) / 2;
            (none, all) = IsWithin(middle) ? (middle, all) : (none, middle);
        }

        return new Stops(none);

        bool IsWithin(double level) => Probability(new Stops(level), -tolerance, tolerance, uncertainty) >= Proven;
    }
}
