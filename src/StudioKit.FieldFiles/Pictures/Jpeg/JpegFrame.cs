namespace StudioKit.FieldFiles.Pictures.Jpeg;

/// <summary>What a JPEG's frame header says.</summary>
/// <param name="IsProgressive">Whether the picture comes in ever finer scans.</param>
/// <param name="Width">Pixels in a row [1].</param>
/// <param name="Height">Rows [1].</param>
/// <param name="Components">Brightness and colours, one plane each.</param>
internal sealed record JpegFrame(bool IsProgressive, int Width, int Height, IReadOnlyList<JpegComponent> Components)
{
    private const byte Sequential = 0xC0;
    private const byte ExtendedSequential = 0xC1;
    private const byte Progressive = 0xC2;

    /// <summary>Most samples across in a group of blocks.</summary>
    public int Across => Components.Max(component => component.Across);

    /// <summary>Most samples down in a group of blocks.</summary>
    public int Down => Components.Max(component => component.Down);

    /// <summary>Groups of blocks in a row.</summary>
    public int GroupsWide => Groups(Width, 8 * Across);

    /// <summary>Rows of groups of blocks.</summary>
    public int GroupsHigh => Groups(Height, 8 * Down);

    /// <summary>Blocks of a component in a row, where it has a scan of its own.</summary>
    public int BlocksWide(JpegComponent component) => Groups(Groups(Width * component.Across, Across), 8);

    /// <summary>Rows of blocks of a component, where it has a scan of its own.</summary>
    public int BlocksHigh(JpegComponent component) => Groups(Groups(Height * component.Down, Down), 8);

    /// <summary>Reads a frame header.</summary>
    /// <exception cref="InvalidDataException">It contradicts itself.</exception>
    /// <exception cref="NotSupportedException">It is of a kind that is not read here.</exception>
    public static JpegFrame Read(byte marker, byte[] data)
    {
        if (marker is not (Sequential or ExtendedSequential or Progressive) || data is [not 8, ..])
        {
            throw new NotSupportedException("JPEGs of this kind (arithmetic-coded, lossless or of more than eight bits) cannot be copied. Save it as a baseline JPEG first.");
        }

        var count = data.Length < 6 ? 0 : data[5];
        if (count is 0 or > 4 || data.Length < 6 + (3 * count))
        {
            throw new InvalidDataException("The picture's header is damaged.");
        }

        var components = Enumerable.Range(0, count).Select(i => data.AsSpan(6 + (3 * i), 3).ToArray())
            .Select(part => new JpegComponent(part[0], part[1] >> 4, part[1] & 15, part[2])).ToList();
        var frame = new JpegFrame(marker == Progressive, (data[3] << 8) | data[4], (data[1] << 8) | data[2], components);
        return frame is { Width: > 0, Height: > 0 } && components.TrueForAll(component => component is { Across: >= 1 and <= 4, Down: >= 1 and <= 4, Table: <= 3 })
            ? frame
            : throw new InvalidDataException("The picture's header is damaged.");
    }

    private static int Groups(int length, int each) => (length + each - 1) / each;
}
