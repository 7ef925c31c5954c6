using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Packing;

/// <summary>How much a healthy adult should lift, by the revised lifting equation.</summary>
public static class RecommendedLift
{
    private const double LoadConstant = 23;

    /// <summary>Recommended weight limit.</summary>
    /// <param name="horizontal">Hands to ankles' middle H [cm]; ≥ 0; under 25 counts as 25, over 63 gives nought.</param>
    /// <param name="vertical">Hands over the floor V [cm]; 0 to 175.</param>
    /// <param name="travel">Lift D [cm]; 0 to 175; under 25 counts as 25.</param>
    /// <param name="twist">Twist of the body A [°]; 0 to 135.</param>
    /// <param name="frequencyFactor">Factor for how often FM [1]; 0 to 1.</param>
    /// <param name="gripFactor">Factor for the grip CM [1]; 0 to 1.</param>
    /// <returns>23·(25/H)·(1 − 0.003|V − 75|)·(0.82 + 4.5/D)·(1 − 0.0032A)·FM·CM [kg].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("NIOSH1994", "revised lifting equation")]
    public static double Limit(
        double horizontal, double vertical, double travel, double twist, double frequencyFactor, double gripFactor) =>
        LoadConstant
        * HorizontalFactor(horizontal)
        * (1 - (0.003 * Math.Abs(Guard.Between(vertical, 0, 175) - 75)))
        * (0.82 + (4.5 / Math.Max(25, Guard.Between(travel, 0, 175))))
        * (1 - (0.0032 * Guard.Between(twist, 0, 135)))
        * Guard.Between(frequencyFactor, 0, 1)
        * Guard.Between(gripFactor, 0, 1);

    private static double HorizontalFactor(double horizontal) =>
        Guard.NonNegative(horizontal) > 63 ? 0 : 25 / Math.Max(25, horizontal);
}
