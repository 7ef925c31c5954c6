using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Lobes;

/// <summary>How a translucent sheet spreads what goes through it: a lobe cosˢ about the light's own way on.</summary>
/// <remarks>
/// L/M = max(cos γ, cos 85°)ˢ/N, γ between the way on and the way out, N = ∫max(cos γ, cos 85°)ˢ·cos θ dω over the top's half space,
/// so that all light counted in the total transmittance comes out. The floor at 85° keeps the passage to s = 0, Lambertian, smooth.
/// A sheet of little scatter so shows its hot spot where the camera looks down the beam.
/// </remarks>
public sealed class ScatterLobe
{
    private const double LowestCosine = 0.0871557427476582;
    private const int Steps = 24;

    private readonly double _exponent;
    private readonly double[] _norms;

    /// <summary>Makes a lobe.</summary>
    /// <param name="exponent">Exponent s [1]; ≥ 0; 0 is Lambertian.</param>
    /// <exception cref="ArgumentOutOfRangeException">The exponent is negative or not finite.</exception>
    public ScatterLobe(double exponent)
    {
        _exponent = Guard.NonNegative(exponent);
        _norms = IsLambertian ? [] : [.. Enumerable.Range(0, Steps + 1).Select(i => Norm((double)i / Steps))];
    }

    /// <summary>Whether it looks equally bright from everywhere.</summary>
    public bool IsLambertian => _exponent == 0;

    /// <summary>Luminance towards a direction over luminous exitance.</summary>
    /// <param name="incidence">Cosine between the light's way on and the sheet's normal [1]; 0 to 1.</param>
    /// <param name="deviation">Cosine of the angle γ between the light's way on and the way out [1]; −1 to 1.</param>
    /// <returns>L/M [1/sr]; 1/π for a perfect diffuser.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A cosine is outside −1 to 1.</exception>
    [Source("Derived", "cosˢ lobe about the transmitted ray, scaled to the total transmittance")]
    public double PerExitance(double incidence, double deviation)
    {
        Guard.Between(incidence, -1.000001, 1.000001);
        Guard.Between(deviation, -1.000001, 1.000001);
        if (IsLambertian)
        {
            return 1 / Math.PI;
        }

        var place = Math.Clamp(incidence, 0, 1) * Steps;
        var step = Math.Min((int)place, Steps - 1);
        var norm = _norms[step] + ((_norms[step + 1] - _norms[step]) * (place - step));
        return Math.Pow(Math.Max(deviation, LowestCosine), _exponent) / norm;
    }

    // Midpoint rule in the square of the sine and the azimuth, where cos θ dω = d(sin²θ)/2 dφ; 64 × 64 cells.
    private double Norm(double incidence)
    {
        const int Cells = 64;
        var slope = Math.Sqrt(1 - (incidence * incidence));
        var sum = 0.0;
        for (var i = 0; i < Cells; i++)
        {
            var square = (i + 0.5) / Cells;
            var (sine, cosine) = (Math.Sqrt(square), Math.Sqrt(1 - square));
            for (var j = 0; j < Cells; j++)
            {
                var deviation = (incidence * cosine) + (slope * sine * Math.Cos((j + 0.5) * Math.PI / Cells));
                sum += Math.Pow(Math.Max(deviation, LowestCosine), _exponent);
            }
        }

        return sum * Math.PI / (Cells * Cells);
    }
}
