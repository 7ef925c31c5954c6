using MathNet.Numerics.LinearAlgebra;
using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration.Drift;

/// <summary>What a reading makes of several quantities that are known as a normal distribution, when it depends on them by a sum.</summary>
/// <remarks>A reading is y = a·x + e with x the quantities of covariance Σ, a its effect and e its own error. What it leaves does not depend on what it will say.</remarks>
public static class LinearGaussian
{
    /// <summary>Covariance once a reading is known.</summary>
    /// <param name="covariance">Covariance Σ of the quantities before.</param>
    /// <param name="effect">Effect a of each quantity on the reading.</param>
    /// <param name="variance">Variance r of the reading's own error; &gt; 0.</param>
    /// <returns>Σ − Σa(Σa)ᵀ/(aᵀΣa + r).</returns>
    /// <exception cref="ArgumentOutOfRangeException">The variance is not above zero, or not finite.</exception>
    [Source("Gelman2013", "normal linear model: posterior given one observation more")]
    public static Matrix<double> After(Matrix<double> covariance, Vector<double> effect, double variance)
    {
        ArgumentNullException.ThrowIfNull(covariance);
        ArgumentNullException.ThrowIfNull(effect);
        var shared = covariance * effect;
        return covariance - (shared.OuterProduct(shared) / ((effect * shared) + Guard.Positive(variance)));
    }

    /// <summary>Variance of a sum of the quantities once a reading is known, or the same reading several times.</summary>
    /// <param name="sum">Share c of each quantity in the sum.</param>
    /// <param name="covariance">Covariance Σ of the quantities before.</param>
    /// <param name="effect">Effect a of each quantity on the reading.</param>
    /// <param name="variance">Variance r of the reading's own error; 0 for what endless repeats leave.</param>
    /// <returns>cᵀΣc − (cᵀΣa)²/(aᵀΣa + r), not under 0.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The variance is negative, or not finite.</exception>
    [Source("Gelman2013", "normal linear model: posterior given one observation more")]
    public static double Left(Vector<double> sum, Matrix<double> covariance, Vector<double> effect, double variance)
    {
        ArgumentNullException.ThrowIfNull(sum);
        ArgumentNullException.ThrowIfNull(covariance);
        ArgumentNullException.ThrowIfNull(effect);
        var (before, shared) = (sum * covariance * sum, covariance * effect);
        var seen = (effect * shared) + Guard.NonNegative(variance);
        return seen > 0 ? Math.Max(0, before - (Math.Pow(sum * shared, 2) / seen)) : before;
    }

    /// <summary>Fewest repeats of a reading after which a sum of the quantities is as sure as asked for.</summary>
    /// <param name="sum">Share c of each quantity in the sum.</param>
    /// <param name="covariance">Covariance Σ of the quantities before.</param>
    /// <param name="effect">Effect a of each quantity on the reading.</param>
    /// <param name="variance">Variance r of one reading's own error, which repeats average; &gt; 0.</param>
    /// <param name="asked">Variance that is asked for; &gt; 0.</param>
    /// <returns>n [1], 0 where it is so sure already; none where no number of repeats gets there.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A variance is not above zero, or not finite.</exception>
    [Source("Gelman2013", "section 2.5: n observations of one quantity weigh as one of variance r/n")]
    public static int? Repeats(Vector<double> sum, Matrix<double> covariance, Vector<double> effect, double variance, double asked)
    {
        Guard.Positive(variance);
        Guard.Positive(asked);
        ArgumentNullException.ThrowIfNull(sum);
        ArgumentNullException.ThrowIfNull(covariance);
        ArgumentNullException.ThrowIfNull(effect);
        var (before, shared) = (sum * covariance * sum, covariance * effect);
        if (before <= asked)
        {
            return 0;
        }

        // (cΣa)²/(aΣa + r/n) is to take at least what is too much.
        var room = (Math.Pow(sum * shared, 2) / (before - asked)) - (effect * shared);
        return room > 0 && variance / room < int.MaxValue ? (int)Math.Ceiling((variance / room) - 1e-9) : null;
    }

    /// <summary>Information that a sum of the quantities gains.</summary>
    /// <param name="before">Variance before; &gt; 0.</param>
    /// <param name="after">Variance after; above 0, at most that before.</param>
    /// <returns>½·log₂(before/after) [bit].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A variance is not above zero, or not finite.</exception>
    [Source("CoverThomas2006", "section 8.6, mutual information of jointly normal quantities")]
    public static double Bits(double before, double after) => 0.5 * Math.Log2(Guard.Positive(before) / Guard.Positive(after));
}
