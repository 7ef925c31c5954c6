using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Shape factors of thin rectangular plates held flat at all edges.</summary>
/// <remarks>
/// The freely supported plate's edges are turned back to level by edge moments, each a cosine series; that every edge is level at
/// every harmonic gives one linear system for the moments. a is the short side, b the long one.
/// </remarks>
public static class ClampedPlate
{
    // Twenty odd harmonics an edge settle sag and edge moment to a few thousandths; past aspect 8 the plate is a strip to that accuracy.
    private const int Harmonics = 20;
    private const double StripAspect = 8;

    /// <summary>Shape factor α of the sag under a uniform load, w = α·q·a⁴/D.</summary>
    /// <param name="aspect">Long over short side b/a [1]; ≥ 1.</param>
    /// <returns>α [1]; 0.00127 for a square, 1/384 for an endless strip.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="aspect"/> is under 1 or not finite.</exception>
    [Source("Timoshenko1959", "art. 44")]
    public static double UniformSag(double aspect)
    {
        var b = Within(aspect);
        return PlateBending.UniformSag(b) + CentreOf(EdgeMoments(b, UniformSlopes(b)), b);
    }

    /// <summary>Shape factor α of the sag under a load at the centre, w = α·P·a²/D.</summary>
    /// <param name="aspect">Long over short side b/a [1]; ≥ 1.</param>
    /// <returns>α [1]; 0.00560 for a square.</returns>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="aspect"/> is under 1 or not finite.</exception>
    [Source("Timoshenko1959", "art. 45")]
    public static double CentralSag(double aspect)
    {
        var b = Within(aspect);
        return PlateBending.CentralSag(b) + CentreOf(EdgeMoments(b, CentralSlopes(b)), b);
    }

    private static double Within(double aspect) => Math.Min(StripAspect, Guard.Between(aspect, 1, double.MaxValue));

    // Unknowns: moments along the short edges (wave number k across a = 1), then along the long edges (wave number l across b).
    private static double[] EdgeMoments(double b, double[] freeSlopes)
    {
        var system = new double[2 * Harmonics, 2 * Harmonics];
        for (var i = 0; i < Harmonics; i++)
        {
            var (k, l) = (Wave(i, 1), Wave(i, b));
            system[i, i] = OwnSlope(k, k * b / 2);
            system[Harmonics + i, Harmonics + i] = OwnSlope(l, l / 2);
            for (var n = 0; n < Harmonics; n++)
            {
                var cross = Sign(i) * Sign(n) * 4 * k * Wave(n, b) / Math.Pow((k * k) + (Wave(n, b) * Wave(n, b)), 2);
                system[i, Harmonics + n] = cross;
                system[Harmonics + n, i] = cross / b;
            }
        }

        return LinearSystem.Solve(system, freeSlopes);
    }

    // Inward slope at an edge from a unit moment along it and its opposite, in units of 1/D.
    private static double OwnSlope(double wave, double x) => (Math.Tanh(x) + (x * Sech2(x))) / (2 * wave);

    // Slopes that the load alone gives the edges of the freely supported plate, in units of 1/D.
    private static double[] UniformSlopes(double b) => Slopes(
        b,
        (i, wave, x, across) => -2 * Sign(i) / (wave * across * Math.Pow(wave, 3)) * (Math.Tanh(x) - (x * Sech2(x))));

    private static double[] CentralSlopes(double b) => Slopes(
        b,
        (_, wave, x, across) => -CentreFromMoment(wave, x) / across);

    private static double[] Slopes(double b, Func<int, double, double, double, double> slope) =>
    [
        .. Enumerable.Range(0, Harmonics).Select(i => slope(i, Wave(i, 1), Wave(i, 1) * b / 2, 1)),
        .. Enumerable.Range(0, Harmonics).Select(i => slope(i, Wave(i, b), Wave(i, b) / 2, b)),
    ];

    private static double CentreOf(double[] moments, double b) => Enumerable.Range(0, Harmonics).Sum(i =>
        (moments[i] * CentreFromMoment(Wave(i, 1), Wave(i, 1) * b / 2))
        + (moments[Harmonics + i] * CentreFromMoment(Wave(i, b), Wave(i, b) / 2)));

    // Sag at the centre from a unit moment along an edge and its opposite, in units of 1/D.
    private static double CentreFromMoment(double wave, double x) => x * Math.Tanh(x) / (2 * wave * wave * Math.Cosh(x));

    private static double Wave(int i, double side) => ((2 * i) + 1) * Math.PI / side;

    private static int Sign(int i) => i % 2 == 0 ? 1 : -1;

    private static double Sech2(double x) => 1 / (Math.Cosh(x) * Math.Cosh(x));
}
