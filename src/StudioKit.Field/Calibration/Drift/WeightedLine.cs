using MathNet.Numerics.Distributions;
using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration.Drift;

/// <summary>A straight line through points of unequal weight, with how sure its slope is.</summary>
/// <param name="Intercept">Value a at 0.</param>
/// <param name="Slope">Slope b.</param>
/// <param name="InterceptError">Standard error of the intercept.</param>
/// <param name="SlopeError">Standard error of the slope.</param>
/// <param name="Scatter">Residual standard deviation s, at weight 1.</param>
/// <param name="DegreesOfFreedom">Points less two [1].</param>
public sealed record WeightedLine(double Intercept, double Slope, double InterceptError, double SlopeError, double Scatter, int DegreesOfFreedom)
{
    /// <summary>Fewest points whose scatter can be told [1].</summary>
    public const int FewestPoints = 3;

    /// <summary>Lays the line: least weighted squares, the scatter taken from the points themselves.</summary>
    /// <param name="points">Points with weights above 0; three or more.</param>
    /// <returns>b = Σw(x − x̄)(y − ȳ)/Σw(x − x̄)², s² = Σw·r²/(n − 2), standard error of b s/√Σw(x − x̄)².</returns>
    /// <exception cref="ArgumentException">There are too few points, all at one place, or a weight is not above 0.</exception>
    [Source("NistHandbook", "section 4.4.3.2, weighted least squares; 4.4.3.1 standard deviations of parameters")]
    public static WeightedLine Through(IReadOnlyList<(double X, double Y, double Weight)> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        var sum = points.Sum(point => Guard.Positive(point.Weight));
        var (x, y) = (points.Sum(point => point.Weight * point.X) / sum, points.Sum(point => point.Weight * point.Y) / sum);
        var spread = points.Sum(point => point.Weight * (point.X - x) * (point.X - x));
        if (points.Count < FewestPoints || !(spread > 0))
        {
            throw new ArgumentException("A line with its errors needs three points at two places or more.", nameof(points));
        }

        var slope = points.Sum(point => point.Weight * (point.X - x) * (point.Y - y)) / spread;
        var scatter = Math.Sqrt(points.Sum(point => point.Weight * Math.Pow(point.Y - y - (slope * (point.X - x)), 2)) / (points.Count - 2));
        return new WeightedLine(y - (slope * x), slope, scatter * Math.Sqrt((1 / sum) + (x * x / spread)), scatter / Math.Sqrt(spread), scatter, points.Count - 2);
    }

    /// <summary>Half the width of the interval that holds the true slope with a probability.</summary>
    /// <param name="confidence">The probability [1]; above 0, under 1.</param>
    /// <returns>t·(standard error of the slope), t of Student's distribution with the line's degrees of freedom.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The probability is outside its range.</exception>
    [Source("NistHandbook", "section 1.3.6.7.2, critical values of Student's t")]
    public double SlopeInterval(double confidence) =>
        StudentT.InvCDF(0, 1, DegreesOfFreedom, 0.5 + (Guard.Between(confidence, 0, 1 - 1e-12) / 2)) * SlopeError;
}
