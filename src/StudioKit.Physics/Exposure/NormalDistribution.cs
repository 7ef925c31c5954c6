using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>The normal distribution of mean 0 and standard deviation 1.</summary>
internal static class NormalDistribution
{
    // From here on the series loses digits, and the fraction settles within its depth.
    private const double Tail = 4;
    private const int Depth = 80;

    // Terms under this change no digit of a probability.
    private const double Least = 1e-17;

    /// <summary>Probability of a value under a limit.</summary>
    /// <param name="limit">The limit [1].</param>
    /// <returns>Φ(limit) [1]; off by less than 1e-14.</returns>
    [Source("AbramowitzStegun", "26.2.11 and 26.2.14")]
    public static double Below(double limit) => limit switch
    {
        > Tail => 1 - Beyond(limit),
        < -Tail => Beyond(-limit),
        _ => 0.5 + WithinFromMean(limit),
    };

    // φ(z)·(z + z³/3 + z⁵/(3·5) + …)
    private static double WithinFromMean(double limit)
    {
        var (term, sum) = (limit, 0.0);
        for (var odd = 3; Math.Abs(term) > Least; odd += 2)
        {
            sum += term;
            term *= limit * limit / odd;
        }

        return Density(limit) * sum;
    }

    // φ(z)/(z + 1/(z + 2/(z + 3/(…))))
    private static double Beyond(double limit)
    {
        var fraction = limit;
        for (var k = Depth; k > 0; k--)
        {
            fraction = limit + (k / fraction);
        }

        return Density(limit) / fraction;
    }

    private static double Density(double value) => Math.Exp(-value * value / 2) / Math.Sqrt(2 * Math.PI);
}
