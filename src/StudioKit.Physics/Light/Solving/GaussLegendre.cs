using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Points and weights by which a mean over a span is exact for polynomials up to degree 2n − 1, n points being used.</summary>
/// <remarks>The points are the roots xᵢ of the Legendre polynomial Pₙ, found by Newton's steps; the weights are 2/((1 − xᵢ²)·Pₙ′(xᵢ)²).</remarks>
[Source("AbramowitzStegun", "25.4.29, 22.7.10 and 22.8.5")]
internal static class GaussLegendre
{
    // Each step doubles the digits, and the first guess has two of them or more.
    private const int Steps = 6;

    /// <summary>The rule over a span about zero.</summary>
    /// <param name="count">How many points; at least 1.</param>
    /// <param name="half">Half the span.</param>
    /// <returns>Points from the lowest on and their weights, which sum to the span.</returns>
    public static (double Place, double Weight)[] About(int count, double half)
    {
        var rule = new (double Place, double Weight)[count];
        for (var i = 0; i < count; i++)
        {
            var (root, slope) = Root(count, Math.Cos(Math.PI * (count - i - 0.25) / (count + 0.5)));
            rule[i] = (half * root, half * 2 / ((1 - (root * root)) * slope * slope));
        }

        return rule;
    }

    private static (double Root, double Slope) Root(int degree, double guess)
    {
        var (root, slope) = (guess, 0.0);
        for (var step = 0; step < Steps; step++)
        {
            (var value, slope) = Legendre(degree, root);
            root -= value / slope;
        }

        return (root, slope);
    }

    // The polynomial and its derivative: k·Pₖ = (2k − 1)·x·Pₖ₋₁ − (k − 1)·Pₖ₋₂; (x² − 1)·Pₙ′ = n·(x·Pₙ − Pₙ₋₁).
    private static (double Value, double Slope) Legendre(int degree, double x)
    {
        var (before, value) = (1.0, x);
        for (var k = 2; k <= degree; k++)
        {
            (before, value) = (value, ((((2 * k) - 1) * x * value) - ((k - 1) * before)) / k);
        }

        return (value, degree * ((x * value) - before) / ((x * x) - 1));
    }
}
