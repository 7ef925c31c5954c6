using System.Numerics;
using System.Runtime.InteropServices;

namespace StudioKit.Physics.Light;

/// <summary>Elementary functions and sums on as many numbers at once as the machine's vectors hold.</summary>
internal static class VectorMath
{
    public static readonly int Lanes = Vector<double>.Count;

    // Twice the lanes of most processors, which keeps two sums of theirs going at once.
    private const int Partials = 8;

    private static readonly Vector<double> One = Vector<double>.One;

    /// <summary>Next multiple of the vector length.</summary>
    public static int Padded(int count) => (count + Lanes - 1) / Lanes * Lanes;

    /// <summary>Length of a row of numbers that <see cref="Dot"/> takes: the next multiple of eight.</summary>
    public static int PaddedRow(int count) => (count + Partials - 1) / Partials * Partials;

    /// <summary>Arctangent, off by less than 1e-12.</summary>
    /// <remarks>
    /// atan x = π/2 − atan(1/x) brings x under 1; atan x = 2·atan(x/(1 + √(1 + x²))), twice, brings it under 0.199,
    /// where the Taylor series to x¹³ leaves 4·0.199¹⁵/15 &lt; 1e-11 and to x¹⁵ less than 1e-12.
    /// </remarks>
    public static Vector<double> Atan(Vector<double> x)
    {
        var size = Vector.Abs(x);
        var isSteep = Vector.GreaterThan(size, One);
        var flat = Vector.ConditionalSelect(isSteep, One / size, size);
        var quarter = Halved(Halved(flat));
        var angle = 4 * Series(quarter);
        angle = Vector.ConditionalSelect(isSteep, new Vector<double>(Math.PI / 2) - angle, angle);
        return Vector.CopySign(angle, x);
    }

    /// <summary>Inner product of two rows of equal length, padded as <see cref="PaddedRow"/> says.</summary>
    /// <remarks>
    /// Made of eight sums, by the place in the row modulo eight, that are joined in one order: so it is rounded alike however many numbers
    /// a vector holds, and a kit's files have the same bytes on every processor.
    /// </remarks>
    public static double Dot(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        var a = MemoryMarshal.Cast<double, Vector<double>>(left);
        var b = MemoryMarshal.Cast<double, Vector<double>>(right);
        return Vector<double>.Count switch
        {
            4 => ByFours(a, b),
            2 => ByTwos(a, b),
            _ => Singly(left, right),
        };
    }

    /// <summary>Multiplies a row, padded as <see cref="PaddedRow"/> says, by a number.</summary>
    public static void Scale(Span<double> row, double factor)
    {
        foreach (ref var value in MemoryMarshal.Cast<double, Vector<double>>(row))
        {
            value *= factor;
        }
    }

    /// <summary>Takes so many times another row from a row, both padded as <see cref="PaddedRow"/> says.</summary>
    public static void Subtract(Span<double> row, double factor, ReadOnlySpan<double> other)
    {
        var values = MemoryMarshal.Cast<double, Vector<double>>(row);
        var others = MemoryMarshal.Cast<double, Vector<double>>(other);
        for (var i = 0; i < values.Length; i++)
        {
            values[i] -= factor * others[i];
        }
    }

    private static double ByFours(ReadOnlySpan<Vector<double>> a, ReadOnlySpan<Vector<double>> b)
    {
        var (low, high) = (Vector<double>.Zero, Vector<double>.Zero);
        for (var i = 0; i + 1 < a.Length; i += 2)
        {
            low += a[i] * b[i];
            high += a[i + 1] * b[i + 1];
        }

        var sum = low + high;
        return sum[0] + sum[1] + (sum[2] + sum[3]);
    }

    private static double ByTwos(ReadOnlySpan<Vector<double>> a, ReadOnlySpan<Vector<double>> b)
    {
        var (low, high) = (Vector<double>.Zero, Vector<double>.Zero);
        var (lowNext, highNext) = (Vector<double>.Zero, Vector<double>.Zero);
        for (var i = 0; i + 3 < a.Length; i += 4)
        {
            low += a[i] * b[i];
            lowNext += a[i + 1] * b[i + 1];
            high += a[i + 2] * b[i + 2];
            highNext += a[i + 3] * b[i + 3];
        }

        var (sum, next) = (low + high, lowNext + highNext);
        return sum[0] + sum[1] + (next[0] + next[1]);
    }

    private static double Singly(ReadOnlySpan<double> left, ReadOnlySpan<double> right)
    {
        Span<double> sums = stackalloc double[Partials];
        sums.Clear();
        for (var i = 0; i < left.Length; i++)
        {
            sums[i % Partials] += left[i] * right[i];
        }

        return sums[0] + sums[4] + (sums[1] + sums[5]) + (sums[2] + sums[6] + (sums[3] + sums[7]));
    }

    private static Vector<double> Halved(Vector<double> tangent) =>
        tangent / (One + Vector.SquareRoot(One + (tangent * tangent)));

    private static Vector<double> Series(Vector<double> t)
    {
        var s = t * t;
        var sum = new Vector<double>(-1.0 / 15);
        sum = (sum * s) + new Vector<double>(1.0 / 13);
        sum = (sum * s) - new Vector<double>(1.0 / 11);
        sum = (sum * s) + new Vector<double>(1.0 / 9);
        sum = (sum * s) - new Vector<double>(1.0 / 7);
        sum = (sum * s) + new Vector<double>(1.0 / 5);
        sum = (sum * s) - new Vector<double>(1.0 / 3);
        return t * ((sum * s) + One);
    }
}
