using MathNet.Numerics.Distributions;
using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration.Drift;

/// <summary>How much a quantity differs from outing to outing beyond what the readings themselves leave open.</summary>
/// <param name="Stops">Standard deviation between outings τ, in stops [1]; 0 where the outings differ no more than their readings explain.</param>
/// <param name="Q">Sum of weighted squares about the weighted mean [1].</param>
/// <param name="Chance">Chance that outings which do not differ at all scatter as much [1].</param>
public sealed record OutingScatter(double Stops, double Q, double Chance)
{
    /// <summary>Fewest outings that tell it [1].</summary>
    public const int FewestOutings = 3;

    // Chance that is no longer taken for chance, as of a drift.
    private const double LeastChance = 0.05;

    /// <summary>Whether the outings differ by more than chance makes of readings like these.</summary>
    public bool IsSignificant => Chance <= LeastChance && Stops > 0;

    /// <summary>Works it out from what each outing alone says.</summary>
    /// <param name="outings">What the outings say; three or more.</param>
    /// <returns>τ² = (Q − (k − 1))/(Σw − Σw²/Σw), not under 0, with Q = Σw(y − ȳ)² and w = 1/σ².</returns>
    /// <exception cref="ArgumentException">There are too few outings.</exception>
    /// <exception cref="ArgumentOutOfRangeException">An uncertainty is not above zero, or not finite.</exception>
    [Source("DerSimonianLaird1986", "method of moments for the variance between studies")]
    public static OutingScatter Of(IReadOnlyList<OutingEstimate> outings)
    {
        ArgumentNullException.ThrowIfNull(outings);
        if (outings.Count < FewestOutings)
        {
            throw new ArgumentException("Three outings are the fewest that differ from each other in a way that can be told.", nameof(outings));
        }

        var weighed = outings.Select(outing => (outing.Stops, Weight: 1 / Math.Pow(Guard.Positive(outing.UncertaintyStops), 2))).ToList();
        var sum = weighed.Sum(outing => outing.Weight);
        var mean = weighed.Sum(outing => outing.Weight * outing.Stops) / sum;
        var q = weighed.Sum(outing => outing.Weight * Math.Pow(outing.Stops - mean, 2));
        var between = (q - (outings.Count - 1)) / (sum - (weighed.Sum(outing => outing.Weight * outing.Weight) / sum));
        return new OutingScatter(Math.Sqrt(Math.Max(0, between)), q, 1 - ChiSquared.CDF(outings.Count - 1, q));
    }
}
