using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Shape factors of thin, freely supported rectangular plates, by Lévy's single series.</summary>
/// <remarks>a is the short side, b the long side, D the flexural rigidity; small deflections, t ≤ a/4 and w ≤ t/2.</remarks>
public static class PlateBending
{
    // The hyperbolic terms fall as e^(−mπb/2a), so ten odd harmonics leave less than 1e-12.
    private const int LastHarmonic = 39;

    /// <summary>Flexural rigidity.</summary>
    /// <param name="youngsModulus">Young's modulus E [Pa]; &gt; 0.</param>
    /// <param name="thickness">Thickness t [m]; &gt; 0.</param>
    /// <param name="poissonRatio">Poisson's ratio ν [1]; 0 to 0.5.</param>
    /// <returns>E·t³/(12(1 − ν²)) [N·m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Timoshenko1959", "eq. 3")]
    public static double Rigidity(double youngsModulus, double thickness, double poissonRatio)
    {
        var nu = Guard.Between(poissonRatio, 0, 0.5);
        return Guard.Positive(youngsModulus) * Math.Pow(Guard.Positive(thickness), 3) / (12 * (1 - (nu * nu)));
    }

    /// <summary>Shape factor α of the sag under a uniform load, w = α·q·a⁴/D.</summary>
    /// <param name="aspect">Long over short side b/a [1]; ≥ 1.</param>
    /// <returns>α [1]; 0.00406 for a square, 5/384 for an endless strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="aspect"/> is under 1 or not finite.</exception>
    [Source("Timoshenko1959", "art. 30")]
    public static double UniformSag(double aspect)
    {
        Guard.Between(aspect, 1, double.MaxValue);
        return (5.0 / 384) - (4 / Math.Pow(Math.PI, 5) * Harmonics(aspect, (m, x) => FarEdges(x) / Math.Pow(m, 5)));
    }

    /// <summary>Shape factor β of the bending moment at the centre across the short side, M = β·q·a².</summary>
    /// <param name="aspect">Long over short side b/a [1]; ≥ 1.</param>
    /// <param name="poissonRatio">Poisson's ratio ν [1]; 0 to 0.5.</param>
    /// <returns>β [1]; 0.0479 for a square at ν = 0.3, 1/8 for an endless strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Timoshenko1959", "art. 30")]
    public static double UniformMoment(double aspect, double poissonRatio)
    {
        Guard.Between(aspect, 1, double.MaxValue);
        var nu = Guard.Between(poissonRatio, 0, 0.5);
        var sum = Harmonics(aspect, (m, x) => ((FarEdges(x) * (1 - nu)) + (nu * Sech(x))) / Math.Pow(m, 3));
        return (1.0 / 8) - (4 / Math.Pow(Math.PI, 3) * sum);
    }

    /// <summary>Shape factor α of the sag under a load at the centre, w = α·P·a²/D.</summary>
    /// <param name="aspect">Long over short side b/a [1]; ≥ 1.</param>
    /// <returns>α [1]; 0.01160 for a square, 0.01695 for an endless strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="aspect"/> is under 1 or not finite.</exception>
    /// <remarks>α = (1/2π³)·Σ (tanh A − A/cosh² A)/m³ over odd m, A = mπb/(2a).</remarks>
    [Source("Timoshenko1959", "art. 34")]
    public static double CentralSag(double aspect)
    {
        Guard.Between(aspect, 1, double.MaxValue);

        // Σ 1/m³ over odd m is 7ζ(3)/8; only what the far edges take off it is summed.
        const double OddCubes = 7 * 1.2020569031595942 / 8;
        var taken = 0.0;
        for (var m = 1; m <= LastHarmonic; m += 2)
        {
            var x = m * Math.PI * aspect / 2;
            taken += (1 - Math.Tanh(x) + (x * Sech(x) * Sech(x))) / Math.Pow(m, 3);
        }

        return (OddCubes - taken) / (2 * Math.Pow(Math.PI, 3));
    }

    /// <summary>Bending stress under a load spread over a small circle at the centre.</summary>
    /// <param name="load">Load W [N]; ≥ 0.</param>
    /// <param name="shortSide">Short side a [m]; &gt; 0.</param>
    /// <param name="longSide">Long side b [m]; ≥ a.</param>
    /// <param name="thickness">Thickness t [m]; &gt; 0.</param>
    /// <param name="contactRadius">Radius of the circle r₀ [m]; ≥ 0.</param>
    /// <param name="poissonRatio">Poisson's ratio ν [1]; 0 to 0.5.</param>
    /// <returns>3W/(2πt²)·((1 + ν)·ln(2a/πr₀′) + β) [Pa], r₀′ = √(1.6r₀² + t²) − 0.675t for r₀ under t/2, else r₀.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>β is read from the table between its columns.</remarks>
    [Source("Young2002", "table 11.4, case 1b")]
    public static double CentralStress(
        double load, double shortSide, double longSide, double thickness, double contactRadius, double poissonRatio)
    {
        var (a, t) = (Guard.Positive(shortSide), Guard.Positive(thickness));
        var nu = Guard.Between(poissonRatio, 0, 0.5);
        var r = Guard.NonNegative(contactRadius);
        var r0 = r < t / 2 ? Math.Sqrt((1.6 * r * r) + (t * t)) - (0.675 * t) : r;
        var beta = CentralStressTable.At(Guard.Between(longSide / a, 1, double.MaxValue, nameof(longSide)));

        return 3 * Guard.NonNegative(load) / (2 * Math.PI * t * t) * (((1 + nu) * Math.Log(2 * a / (Math.PI * r0))) + beta);
    }

    private static double Harmonics(double aspect, Func<int, double, double> term)
    {
        var sum = 0.0;
        for (var m = 1; m <= LastHarmonic; m += 2)
        {
            sum += (m % 4 == 1 ? 1 : -1) * term(m, m * Math.PI * aspect / 2);
        }

        return sum;
    }

    // What the two far edges take away; tends to nought as they move off.
    private static double FarEdges(double x) => ((x * Math.Tanh(x)) + 2) * Sech(x) / 2;

    private static double Sech(double x) => 1 / Math.Cosh(x);
}
