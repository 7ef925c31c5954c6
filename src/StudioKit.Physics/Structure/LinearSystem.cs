namespace StudioKit.Physics.Structure;

/// <summary>Small dense systems of linear equations.</summary>
/// <remarks>Forty unknowns take a few microseconds; a library's solver took 200 ms to start up for the first of them.</remarks>
internal static class LinearSystem
{
    /// <summary>Solves A·x = b by elimination with row pivots; both arrays are used up.</summary>
    /// <exception cref="InvalidOperationException">The system is singular.</exception>
    public static double[] Solve(double[,] a, double[] b)
    {
        for (var column = 0; column < b.Length; column++)
        {
            Swap(a, b, column, Pivot(a, column));
            for (var row = column + 1; row < b.Length; row++)
            {
                Eliminate(a, b, column, row);
            }
        }

        for (var row = b.Length - 1; row >= 0; row--)
        {
            for (var column = row + 1; column < b.Length; column++)
            {
                b[row] -= a[row, column] * b[column];
            }

            b[row] /= a[row, row];
        }

        return b;
    }

    private static int Pivot(double[,] a, int column)
    {
        var best = column;
        for (var row = column + 1; row < a.GetLength(0); row++)
        {
            best = Math.Abs(a[row, column]) > Math.Abs(a[best, column]) ? row : best;
        }

        return Math.Abs(a[best, column]) > 0 ? best : throw new InvalidOperationException("The system is singular.");
    }

    private static void Swap(double[,] a, double[] b, int one, int other)
    {
        for (var column = 0; column < b.Length; column++)
        {
            (a[one, column], a[other, column]) = (a[other, column], a[one, column]);
        }

        (b[one], b[other]) = (b[other], b[one]);
    }

    private static void Eliminate(double[,] a, double[] b, int from, int row)
    {
        var factor = a[row, from] / a[from, from];
        for (var column = from; column < b.Length; column++)
        {
            a[row, column] -= factor * a[from, column];
        }

        b[row] -= factor * b[from];
    }
}
