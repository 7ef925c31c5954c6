namespace StudioKit.FieldFiles.Pictures;

/// <summary>How large a picture may be.</summary>
internal static class PictureBounds
{
    // Five hundred megapixels, as stitching or scanning gives, and something to spare; above it a header is more likely damaged or hostile than true.
    private const long MostPixels = 600_000_000;

    // A few rows must fit into memory.
    private const int LongestSide = 300_000;

    /// <summary>Refuses what is too large.</summary>
    /// <exception cref="InvalidDataException">There are no pixels.</exception>
    /// <exception cref="NotSupportedException">There are too many.</exception>
    public static void Check(int width, int height)
    {
        if (width <= 0 || height <= 0)
        {
            throw new InvalidDataException("The picture's header is damaged.");
        }

        if ((long)width * height > MostPixels)
        {
            throw new NotSupportedException(FormattableString.Invariant(
                $"The picture claims {width} x {height} pixels, more than {MostPixels / 1_000_000} megapixels, which is as many as are read."));
        }

        if (Math.Max(width, height) > LongestSide)
        {
            throw new NotSupportedException(FormattableString.Invariant(
                $"The picture claims {width} x {height} pixels; a side of more than {LongestSide} is not read."));
        }
    }
}
