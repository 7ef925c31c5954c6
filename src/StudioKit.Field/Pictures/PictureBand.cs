namespace StudioKit.Field.Pictures;

/// <summary>A few rows of a picture as stored, four bytes a pixel: red, green, blue and one not used.</summary>
/// <param name="Rgba">Rows one after another; only valid during the visit.</param>
/// <param name="Width">Pixels in a row [1].</param>
/// <param name="FirstRow">Number of the first row in the picture, from 0 [1].</param>
/// <param name="Rows">Rows in the band [1].</param>
public readonly record struct PictureBand(byte[] Rgba, int Width, int FirstRow, int Rows)
{
    /// <summary>The bytes of one row.</summary>
    /// <param name="row">Row within the band, from 0 [1].</param>
    public ReadOnlySpan<byte> Row(int row) => Rgba.AsSpan(row * Width * 4, Width * 4);
}
