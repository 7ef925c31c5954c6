using System.Numerics;
using System.Runtime.InteropServices;

namespace StudioKit.Physics.Light;

/// <summary>Elementary functions and sums on as many numbers at once as the machine's vectors hold.</summary>
internal static class VectorMath
{
    public static readonly int Lanes = Vector<double>.Count;

    // Twice the lanes of most processors, which keeps two sums of theirs going at once.
    private const int Partials = 8;

    private const int MantissaBits = 52;
    private const long ExponentOfOne = 1023;

    // The bits of √½, so that what lies above tells how many times 2 goes into a number.
    private const long RootOfHalf = 0x3FE6_A09E_667F_3BCD;

    // ln 2 in two parts, the first with so few digits that a whole number times it is exact.
    private const double LogOfTwoHigh = 0.693147180369123816490;
    private const double LogOfTwoLow = 1.90821492927058770002e-10;
    private const double LeastExponent = -708;

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

    /// <summary>Arctangent of one number, off by a few units in its last place; reckoned as <see cref="Atan(Vector{double})"/> with a longer series, to t²⁵.</summary>
    /// <remarks>The C library's own rounds otherwise where a processor joins products and sums.</remarks>
    public static double Atan(double x)
    {
        const int Terms = 13;
        var size = Math.Abs(x);
        var quarter = Halved(Halved(size > 1 ? 1 / size : size));
        var (square, sum) = (quarter * quarter, 0.0);
        for (var k = Terms - 1; k >= 0; k--)
        {
            sum = (1.0 / ((2 * k) + 1)) - (square * sum);
        }

        var angle = 4 * quarter * sum;
        return Math.CopySign(size > 1 ? (Math.PI / 2) - angle : angle, x);
    }

    /// <summary>Natural logarithm of one number, as <see cref="Log(Vector{double})"/> has it.</summary>
    public static double Log(double x) => Log(new Vector<double>(x))[0];

    /// <summary>Natural logarithm of a positive number, off by a few units in its last place.</summary>
    /// <remarks>
    /// x = m·2ᵏ with m from √½ to √2, and ln m = 2·artanh t with t = (m − 1)/(m + 1), |t| &lt; 0.172, whose series to t²¹ leaves less than 1e-17 of itself.
    /// Made of plain sums and products alone, in one order: the runtime's own may join a product and a sum into one rounding where a processor can, and then a kit's files would differ.
    /// </remarks>
    /// <param name="x">Numbers [1]; from 1e-300 to 1e300.</param>
    public static Vector<double> Log(Vector<double> x)
    {
        var bits = Vector.AsVectorInt64(x);
        var above = (bits - new Vector<long>(RootOfHalf)) >> MantissaBits;
        var scaled = Vector.AsVectorDouble(bits - (above << MantissaBits));
        var (t, power) = ((scaled - One) / (scaled + One), Vector.ConvertToDouble(above));
        return (power * LogOfTwoHigh) + ((power * LogOfTwoLow) + (t * ArtanhSeries(t * t)) + (t + t));
    }

    /// <summary>Exponential, off by a few units in its last place; 0 from −708 down, where it would be less than any light.</summary>
    /// <remarks>e^y = 2ᵏ·e^r with |r| ≤ ½·ln 2, whose series to r¹³ leaves less than 1e-17; plain sums and products alone, as in <see cref="Log(Vector{double})"/>.</remarks>
    /// <param name="y">Exponents [1]; at most 709.</param>
    public static Vector<double> Exp(Vector<double> y)
    {
        var isLit = Vector.GreaterThan(y, new Vector<double>(LeastExponent));
        var held = Vector.Max(y, new Vector<double>(LeastExponent));
        var power = Vector.Floor((held * (1 / (LogOfTwoHigh + LogOfTwoLow))) + new Vector<double>(0.5));
        var rest = held - (power * LogOfTwoHigh) - (power * LogOfTwoLow);
        var scale = Vector.AsVectorDouble((Vector.ConvertToInt64(power) + new Vector<long>(ExponentOfOne)) << MantissaBits);
        return Vector.ConditionalSelect(isLit, scale * ExponentialSeries(rest), Vector<double>.Zero);
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

    // 2·artanh t = 2t + t·(⅔s + ⅖s² + …), s = t²: what stands in the brackets, to s¹⁰; terms of odd and even power apart, as a processor then works at both.
    private static Vector<double> ArtanhSeries(Vector<double> s)
    {
        var square = s * s;
        return s * (Horner(square, 2.0 / 19, 2.0 / 15, 2.0 / 11, 2.0 / 7, 2.0 / 3) + (s * Horner(square, 2.0 / 21, 2.0 / 17, 2.0 / 13, 2.0 / 9, 2.0 / 5)));
    }

    // 1 + r + r²/2! + … + r¹³/13!.
    private static Vector<double> ExponentialSeries(Vector<double> r)
    {
        var square = r * r;
        var even = (Horner(square, 1.0 / 479_001_600, 1.0 / 3_628_800, 1.0 / 40_320, 1.0 / 720, 1.0 / 24) * square) + new Vector<double>(1.0 / 2);
        var odd = (Horner(square, 1.0 / 6_227_020_800, 1.0 / 39_916_800, 1.0 / 362_880, 1.0 / 5_040, 1.0 / 120) * square) + new Vector<double>(1.0 / 6);
        return (even * square) + (odd * square * r) + r + One;
    }

    private static Vector<double> Horner(Vector<double> x, double a, double b, double c, double d, double e)
    {
        var sum = (new Vector<double>(a) * x) + new Vector<double>(b);
        sum = (sum * x) + new Vector<double>(c);
        sum = (sum * x) + new Vector<double>(d);
        return (sum * x) + new Vector<double>(e);
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

    private static double Halved(double tangent) => tangent / (1 + Math.Sqrt(1 + (tangent * tangent)));

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
