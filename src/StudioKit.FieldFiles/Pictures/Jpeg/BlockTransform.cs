namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>Between eight by eight samples and their coefficients (ISO/IEC 10918-1 annex A.3.3).</summary>
internal static class BlockTransform
{
    private static readonly double[] Basis = [.. from frequency in Enumerable.Range(0, 8)
                                              from place in Enumerable.Range(0, 8)
                                              select (frequency == 0 ? Math.Sqrt(0.125) : 0.5) * Math.Cos(((2 * place) + 1) * frequency * Math.PI / 16)];

    private static readonly byte[] RowByRow = ZigZag();

    /// <summary>Place in a block, row by row, of each coefficient in the order of the file (figure A.6).</summary>
    public static ReadOnlySpan<byte> Places => RowByRow;

    /// <summary>Samples of a block, 0 to 255, row by row.</summary>
    public static void ToSamples(ReadOnlySpan<short> coefficients, ReadOnlySpan<ushort> steps, Span<double> samples)
    {
        Span<double> values = stackalloc double[64];
        for (var i = 0; i < 64; i++)
        {
            values[RowByRow[i]] = coefficients[i] * steps[i];
        }

        Transform(values, samples, toSamples: true);
        for (var i = 0; i < 64; i++)
        {
            samples[i] += 128;
        }
    }

    /// <summary>Coefficients of a block's samples, in the order of the file.</summary>
    public static void ToCoefficients(ReadOnlySpan<double> samples, ReadOnlySpan<ushort> steps, Span<short> coefficients)
    {
        Span<double> shifted = stackalloc double[64];
        Span<double> values = stackalloc double[64];
        for (var i = 0; i < 64; i++)
        {
            shifted[i] = samples[i] - 128;
        }

        Transform(shifted, values, toSamples: false);
        for (var i = 0; i < 64; i++)
        {
            // Eight-bit pictures have no categories above ten, for differences of first coefficients eleven.
            coefficients[i] = (short)Math.Clamp(Math.Round(values[RowByRow[i]] / Math.Max((ushort)1, steps[i])), -1023, 1023);
        }
    }

    private static void Transform(ReadOnlySpan<double> from, Span<double> to, bool toSamples)
    {
        Span<double> half = stackalloc double[64];
        for (var y = 0; y < 8; y++)
        {
            for (var x = 0; x < 8; x++)
            {
                var sum = 0.0;
                for (var k = 0; k < 8; k++)
                {
                    sum += from[(8 * y) + k] * (toSamples ? Basis[(8 * k) + x] : Basis[(8 * x) + k]);
                }

                half[(8 * y) + x] = sum;
            }
        }

        for (var y = 0; y < 8; y++)
        {
            for (var x = 0; x < 8; x++)
            {
                var sum = 0.0;
                for (var k = 0; k < 8; k++)
                {
                    sum += half[(8 * k) + x] * (toSamples ? Basis[(8 * k) + y] : Basis[(8 * y) + k]);
                }

                to[(8 * y) + x] = sum;
            }
        }
    }

    // Diagonal by diagonal, the odd ones downwards.
    private static byte[] ZigZag() =>
    [
        .. from diagonal in Enumerable.Range(0, 15)
           from step in Enumerable.Range(Math.Max(0, diagonal - 7), Math.Min(diagonal, 7) - Math.Max(0, diagonal - 7) + 1)
           let row = diagonal % 2 == 1 ? step : diagonal - step
           select (byte)((8 * row) + diagonal - row),
    ];
}
