namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>The filters of a PNG's rows (ISO/IEC 15948 clause 9): each byte is coded as what it differs from its neighbours.</summary>
internal static class PngFilter
{
    /// <summary>Takes a filter off a row, in place.</summary>
    /// <param name="filter">Number of the filter, 0 to 4.</param>
    /// <param name="row">The row as coded; becomes the row itself.</param>
    /// <param name="above">The row above; zeros for the first.</param>
    /// <param name="step">Bytes to the neighbour on the left.</param>
    /// <exception cref="InvalidDataException">There is no such filter.</exception>
    public static void TakeOff(byte filter, Span<byte> row, ReadOnlySpan<byte> above, int step)
    {
        switch (filter)
        {
            case 0:
                return;
            case 1:
                for (var i = step; i < row.Length; i++)
                {
                    row[i] += row[i - step];
                }

                return;
            case 2:
                for (var i = 0; i < row.Length; i++)
                {
                    row[i] += above[i];
                }

                return;
            case 3:
                TakeOffMean(row, above, step);
                return;
            case 4:
                TakeOffPaeth(row, above, step);
                return;
            default:
                throw new InvalidDataException("The picture's data are damaged.");
        }
    }

    /// <summary>Puts a filter onto a row.</summary>
    /// <param name="filter">Number of the filter, 0 to 4.</param>
    /// <param name="row">The row.</param>
    /// <param name="above">The row above; zeros for the first.</param>
    /// <param name="step">Bytes to the neighbour on the left.</param>
    /// <param name="coded">Receives the row as coded.</param>
    public static void PutOn(byte filter, ReadOnlySpan<byte> row, ReadOnlySpan<byte> above, int step, Span<byte> coded)
    {
        for (var i = 0; i < row.Length; i++)
        {
            coded[i] = (byte)(row[i] - Guess(filter, i < step ? 0 : row[i - step], above[i], i < step ? 0 : above[i - step]));
        }
    }

    private static void TakeOffMean(Span<byte> row, ReadOnlySpan<byte> above, int step)
    {
        var first = Math.Min(step, row.Length);
        for (var i = 0; i < first; i++)
        {
            row[i] += (byte)(above[i] / 2);
        }

        for (var i = first; i < row.Length; i++)
        {
            row[i] += (byte)((row[i - step] + above[i]) / 2);
        }
    }

    private static void TakeOffPaeth(Span<byte> row, ReadOnlySpan<byte> above, int step)
    {
        var first = Math.Min(step, row.Length);
        for (var i = 0; i < first; i++)
        {
            row[i] += above[i];
        }

        for (var i = first; i < row.Length; i++)
        {
            row[i] += Paeth(row[i - step], above[i], above[i - step]);
        }
    }

    private static byte Guess(byte filter, int left, int up, int upLeft) => filter switch
    {
        0 => 0,
        1 => (byte)left,
        2 => (byte)up,
        3 => (byte)((left + up) / 2),
        _ => Paeth(left, up, upLeft),
    };

    private static byte Paeth(int left, int up, int upLeft)
    {
        var (toLeft, toUp, toUpLeft) = (Math.Abs(up - upLeft), Math.Abs(left - upLeft), Math.Abs(left + up - (2 * upLeft)));
        return (byte)(toLeft <= toUp && toLeft <= toUpLeft ? left : toUp <= toUpLeft ? up : upLeft);
    }
}
