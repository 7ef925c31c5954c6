using System.Buffers.Binary;

namespace StudioKit.FieldFiles.Pictures.Png;

/// <summary>The header of a PNG (ISO/IEC 15948 clause 11.2.2).</summary>
/// <param name="Width">Pixels in a row [1].</param>
/// <param name="Height">Rows [1].</param>
/// <param name="Depth">Bits of a sample, 1 to 16.</param>
/// <param name="Colour">What the samples are.</param>
/// <param name="IsInterlaced">Whether the rows come in seven passes.</param>
internal sealed record PngHeader(int Width, int Height, int Depth, PngColour Colour, bool IsInterlaced)
{
    // Clause 8.2: first column and row of each pass, and the steps between its columns and rows.
    private static readonly PngPass[] SevenPasses =
        [new(0, 0, 8, 8), new(4, 0, 8, 8), new(0, 4, 4, 8), new(2, 0, 4, 4), new(0, 2, 2, 4), new(1, 0, 2, 2), new(0, 1, 1, 2)];

    private static readonly PngPass[] OnePass = [new(0, 0, 1, 1)];

    /// <summary>Samples of a pixel.</summary>
    public int Samples => Colour switch
    {
        PngColour.Grey or PngColour.Palette => 1,
        PngColour.GreyAlpha => 2,
        PngColour.Rgb => 3,
        _ => 4,
    };

    /// <summary>Greatest value of a sample.</summary>
    public int Most => (1 << Depth) - 1;

    /// <summary>Bytes between a byte and its neighbour to the left, for the filters.</summary>
    public int Step => Math.Max(1, Samples * Depth / 8);

    /// <summary>Passes that hold any pixels, in the order of the file.</summary>
    public IEnumerable<PngPass> Passes => (IsInterlaced ? SevenPasses : OnePass).Where(pass => pass.Left < Width && pass.Top < Height);

    /// <summary>Bytes of a row of so many pixels, without the filter's.</summary>
    public int RowBytes(int pixels) => checked((int)((((long)pixels * Samples * Depth) + 7) / 8));

    /// <summary>Reads a header chunk's data.</summary>
    /// <exception cref="InvalidDataException">It is damaged.</exception>
    public static PngHeader Read(ReadOnlySpan<byte> data)
    {
        if (data.Length != 13)
        {
            throw Damaged();
        }

        var (width, height) = (BinaryPrimitives.ReadInt32BigEndian(data), BinaryPrimitives.ReadInt32BigEndian(data[4..]));
        var (depth, colour) = ((int)data[8], (PngColour)data[9]);
        var isSound = width > 0 && height > 0 && data[10] == 0 && data[11] == 0 && data[12] <= 1 && (colour switch
        {
            PngColour.Grey => depth is 1 or 2 or 4 or 8 or 16,
            PngColour.Palette => depth is 1 or 2 or 4 or 8,
            PngColour.Rgb or PngColour.GreyAlpha or PngColour.RgbAlpha => depth is 8 or 16,
            _ => false,
        });
        return isSound ? new PngHeader(width, height, depth, colour, data[12] == 1) : throw Damaged();
    }

    private static InvalidDataException Damaged() => new("The picture's header is damaged.");
}
