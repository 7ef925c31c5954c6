using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Shape factors of a thin rectangular plate that rests freely on two opposite edges while the other two hang free, by Lévy's single series.</summary>
/// <remarks>a is the span between the held edges, b the length of each of them, D the flexural rigidity; small deflections, t ≤ a/4 and w ≤ t/2.</remarks>
public static class TwoEdgePlate
{
    // What the free edges change falls as e^(−mπb/a): at the narrowest breadth this many odd harmonics leave under a thousandth.
    private const int LastHarmonic = 399;

    /// <summary>Least held edge over span b/a that the waves are summed for [1].</summary>
    internal const double Narrowest = 0.01;

    // Σ 1/m³ over odd m, 7ζ(3)/8.
    private const double OddCubes = 7 * 1.2020569031595942 / 8;

    /// <summary>Shape factors α of the sag under a uniform load, w = α·q·a⁴/D.</summary>
    /// <param name="breadth">Held edge over span b/a [1]; ≥ 0.01.</param>
    /// <param name="poissonRatio">Poisson's ratio ν [1]; 0 to 0.5.</param>
    /// <returns>α at the centre and in the middle of a free edge [1]; 5/384 at the centre of an endless strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Timoshenko1959", "art. 48")]
    public static (double Centre, double FreeEdge) UniformSag(double breadth, double poissonRatio)
    {
        var (centre, edge) = (5.0 / 384, 5.0 / 384);
        foreach (var (m, wave) in Waves(breadth, poissonRatio, FreeEdgeWave.Uniform))
        {
            var share = Sign(m) * 4 / Math.Pow(m * Math.PI, 5);
            (centre, edge) = (centre + (share * wave.CentreSag), edge + (share * wave.EdgeSag));
        }

        return (centre, edge);
    }

    /// <summary>Shape factors β of the bending moment along the span under a uniform load, M = β·q·a².</summary>
    /// <param name="breadth">Held edge over span b/a [1]; ≥ 0.01.</param>
    /// <param name="poissonRatio">Poisson's ratio ν [1]; 0 to 0.5.</param>
    /// <returns>β at the centre and in the middle of a free edge [1]; 1/8 at the centre of an endless strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Timoshenko1959", "art. 48")]
    public static (double Centre, double FreeEdge) UniformMoment(double breadth, double poissonRatio)
    {
        var (centre, edge) = (1.0 / 8, 1.0 / 8);
        foreach (var (m, wave) in Waves(breadth, poissonRatio, FreeEdgeWave.Uniform))
        {
            var share = Sign(m) * 4 / Math.Pow(m * Math.PI, 3);
            (centre, edge) = (centre + (share * wave.CentreMoment), edge + (share * wave.EdgeMoment));
        }

        return (centre, edge);
    }

    /// <summary>Shape factors α of the sag under a load at the centre, w = α·P·a²/D.</summary>
    /// <param name="breadth">Held edge over span b/a [1]; ≥ 0.01.</param>
    /// <param name="poissonRatio">Poisson's ratio ν [1]; 0 to 0.5.</param>
    /// <returns>α at the centre and in the middle of a free edge [1]; 0.01696 at the centre of an endless strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Timoshenko1959", "arts. 36, 48")]
    public static (double Centre, double FreeEdge) CentralSag(double breadth, double poissonRatio)
    {
        var (centre, edge) = (OddCubes / (2 * Math.Pow(Math.PI, 3)), 0.0);
        foreach (var (m, wave) in Waves(breadth, poissonRatio, FreeEdgeWave.Central))
        {
            var share = 1 / (2 * Math.Pow(m * Math.PI, 3));
            (centre, edge) = (centre + (share * wave.CentreSag), edge + (share * (((1 + wave.Alpha) * Math.Exp(-wave.Alpha)) + wave.EdgeSag)));
        }

        return (centre, edge);
    }

    /// <summary>What the free edges add to the bending moment along the span under a load at the centre, M = β·P, over that of an endless strip.</summary>
    /// <param name="breadth">Held edge over span b/a [1]; ≥ 0.01.</param>
    /// <param name="poissonRatio">Poisson's ratio ν [1]; 0 to 0.5.</param>
    /// <returns>β [1]; tends to nought for a wide plate.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Timoshenko1959", "arts. 36, 48")]
    public static double CentralMomentOfFreeEdges(double breadth, double poissonRatio) =>
        Waves(breadth, poissonRatio, FreeEdgeWave.Central).Sum(harmonic => harmonic.Wave.CentreMoment / (2 * Math.PI * harmonic.Order));

    private static IEnumerable<(int Order, FreeEdgeWave Wave)> Waves(double breadth, double poissonRatio, Func<int, double, double, FreeEdgeWave> wave)
    {
        var b = Guard.Between(breadth, Narrowest, double.MaxValue);
        var nu = Guard.Between(poissonRatio, 0, 0.5);
        return Enumerable.Range(0, (LastHarmonic + 1) / 2).Select(i => ((2 * i) + 1, wave((2 * i) + 1, b, nu)));
    }

    private static int Sign(int m) => m % 4 == 1 ? 1 : -1;
}
