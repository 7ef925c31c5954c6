using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Light sent to and fro between diffuse patches until it settles.</summary>
/// <remarks>Eᵢ = Dᵢ + Σ Fᵢⱼ·ρⱼ·Eⱼ, solved by Gauss–Seidel sweeps; each sweep shrinks the rest by about the mean reflectance.</remarks>
[Source("Goral1984", "radiosity equation; Gauss–Seidel solution")]
internal sealed class Radiosity
{
    // A change under this share of the brightest patch is far under the error of the mesh.
    public const double Settled = 1e-7;
    private const int MostSweeps = 2000;

    private readonly double[] _factors;
    private readonly double[] _reflectances;
    private readonly int _stride;

    /// <summary>Takes a row-major matrix of form factors whose rows are padded as <see cref="VectorMath.PaddedRow"/> says.</summary>
    public Radiosity(double[] factors, double[] reflectances)
    {
        (_factors, _reflectances) = (factors, reflectances);
        _stride = VectorMath.PaddedRow(reflectances.Length);
    }

    /// <summary>Length of the padded exitances [1].</summary>
    public int Stride => _stride;

    /// <summary>Turns the direct exposure of every patch into the full one, in place; leaves the exitances.</summary>
    /// <param name="exposure">Exposure of every patch [lx·s].</param>
    /// <param name="exitance">Room for what every patch sends [lx·s].</param>
    /// <param name="settled">Change of a patch, as a share of the brightest, that counts as none [1].</param>
    public void Settle(Span<double> exposure, Span<double> exitance, double settled = Settled)
    {
        exitance.Clear();
        for (var i = 0; i < _reflectances.Length; i++)
        {
            exitance[i] = _reflectances[i] * exposure[i];
        }

        Span<double> direct = new double[_reflectances.Length];
        exposure[.._reflectances.Length].CopyTo(direct);
        for (var sweep = 0; sweep < MostSweeps; sweep++)
        {
            if (Sweep(direct, exposure, exitance) <= settled)
            {
                return;
            }
        }

        throw new InvalidOperationException("Interreflection did not settle: a reflectance is too near 1.");
    }

    // The greatest change of a patch, as a share of the brightest.
    private double Sweep(ReadOnlySpan<double> direct, Span<double> exposure, Span<double> exitance)
    {
        var (change, brightest) = (0.0, 0.0);
        for (var i = 0; i < _reflectances.Length; i++)
        {
            var updated = direct[i] + VectorMath.Dot(_factors.AsSpan(i * _stride, _stride), exitance);
            change = Math.Max(change, Math.Abs(updated - exposure[i]));
            brightest = Math.Max(brightest, updated);
            exposure[i] = updated;
            exitance[i] = _reflectances[i] * updated;
        }

        return brightest > 0 ? change / brightest : 0;
    }
}
