namespace StudioKit.Physics.Tests.Structure;

/// <summary>A plate on two opposite edges by least energy: sines along the span, even powers of y across it. Slow and plain on purpose.</summary>
/// <param name="UniformCentre">w·D/(q·a⁴) at the centre.</param>
/// <param name="UniformEdge">The same in the middle of a free edge.</param>
/// <param name="CentralCentre">w·D/(P·a²) at the centre under a force there.</param>
/// <param name="CentralEdge">The same in the middle of a free edge.</param>
internal sealed record RitzPlate(double UniformCentre, double UniformEdge, double CentralCentre, double CentralEdge)
{
    private const int Powers = 9;
    private const int LastHarmonic = 15;

    public static RitzPlate Solve(double breadth, double nu)
    {
        var sum = new double[4];
        for (var m = 1; m <= LastHarmonic; m += 2)
        {
            var sign = m % 4 == 1 ? 1 : -1;
            var stiffness = Stiffness(m * Math.PI, breadth / 2, nu);
            var uniform = Solve(stiffness, [.. Enumerable.Range(0, Powers).Select(i => 2 / (m * Math.PI) * Integral(2 * i) * (breadth / 2))]);
            var central = Solve(stiffness, [.. Enumerable.Range(0, Powers).Select(i => i == 0 ? sign * 1.0 : 0)]);
            sum[0] += sign * uniform[0];
            sum[1] += sign * uniform.Sum();
            sum[2] += sign * central[0];
            sum[3] += sign * central.Sum();
        }

        return new RitzPlate(sum[0], sum[1], sum[2], sum[3]);
    }

    // ∫∫ of (w_xx + w_yy)² − 2(1 − ν)(w_xx·w_yy − w_xy²) for w = η^2i·sin λx with η = y/c, over half the plate's sines.
    private static double[,] Stiffness(double wave, double c, double nu)
    {
        var matrix = new double[Powers, Powers];
        for (var i = 0; i < Powers; i++)
        {
            for (var k = 0; k < Powers; k++)
            {
                var (p, q) = (2 * i, 2 * k);
                var bend = p * (p - 1) * q * (q - 1) * Integral(p + q - 4) / Math.Pow(c, 4);
                var across = ((p * (p - 1)) + (q * (q - 1))) * Integral(p + q - 2) / (c * c);
                var twist = p * q * Integral(p + q - 2) / (c * c);
                matrix[i, k] = c / 2 * (bend + (Math.Pow(wave, 4) * Integral(p + q)) - (wave * wave * nu * across) + (2 * (1 - nu) * wave * wave * twist));
            }
        }

        return matrix;
    }

    // ∫ η^n over −1 to 1.
    private static double Integral(int n) => n < 0 ? 0 : 2.0 / (n + 1);

    private static double[] Solve(double[,] matrix, double[] right) =>
        [.. MathNet.Numerics.LinearAlgebra.Matrix<double>.Build.DenseOfArray(matrix).Svd().Solve(MathNet.Numerics.LinearAlgebra.Vector<double>.Build.DenseOfArray(right))];
}
