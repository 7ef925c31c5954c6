using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>How long a flash shines when its tube is cut off early to save power (quenched, thyristor or IGBT heads).</summary>
/// <remarks>
/// The tube's light decays as e^(−t/τ) and is cut at t_c = −τ·ln(1 − P), when the wanted share has left it. Studio heads that
/// lower their voltage
/// instead grow slower at low power: not these.
/// </remarks>
public static class FlashDuration
{
    /// <summary>Real heads do not get shorter than about this, whatever the model says.</summary>
    public static readonly Duration UsualShortest = Duration.FromSeconds(1.0 / 40_000);

    /// <summary>Time above a tenth of the peak, t0.1, at a power setting.</summary>
    /// <param name="atFullPower">t0.1 at full power; &gt; 0 s.</param>
    /// <param name="power">Power setting P.</param>
    /// <param name="shortest">Shortest flash of the head, at most <paramref name="atFullPower"/>; 1/40 000 s where none is given.</param>
    /// <returns>min(t_c, τ·ln 10), at least the shortest, with τ = t0.1/ln 10 [s].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A time is not above zero.</exception>
    [Source("Derived", "exponential decay cut off at t_c; threshold definition of t0.1")]
    public static Duration AtPower(Duration atFullPower, FlashPower power, Duration? shortest = null)
    {
        var full = Guard.Positive(atFullPower.Seconds, nameof(atFullPower));
        var floor = Guard.Positive((shortest ?? UsualShortest).Seconds, nameof(shortest));
        var tau = full / Math.Log(10);

        return Duration.FromSeconds(Math.Min(full, Math.Max(floor, CutOff(tau, power.Fraction))));
    }

    // At full power the decay is never cut, and t0.1 alone counts.
    private static double CutOff(double tau, double power) =>
        power >= 1 ? double.MaxValue : -tau * Math.Log(1 - power);
}
