namespace StudioKit.FieldFiles.Tests.Pictures;

/// <summary>Writes evenly coloured baseline JPEGs of any size and number of components, straight from ISO/IEC 10918-1.</summary>
/// <remarks>Every block is its first coefficient and nothing more, so 200 megapixels take two megabytes and no memory.</remarks>
internal static class FlatJpeg
{
    public static void Write(string path, int width, int height, byte[] components, bool adobe = false)
    {
        using var stream = new BufferedStream(File.Create(path), 1 << 16);
        stream.Write([0xFF, 0xD8]);
        if (adobe)
        {
            // "Adobe", version 100, no flags, transform 0: components as they are (for four of them: inverted CMYK).
            Segment(stream, 0xEE, [.. "Adobe"u8, 0, 100, 0, 0, 0, 0, 0]);
        }

        // All steps 1, so the first coefficient is eight times the value less 128.
        Segment(stream, 0xDB, [0, .. Enumerable.Repeat((byte)1, 64)]);
        Segment(stream, 0xC0, [8, .. Big(height), .. Big(width), (byte)components.Length, .. Ids(components, i => [i, 0x11, 0])]);
        // DC: twelve categories, four bits each. AC: end of block alone, one bit.
        Segment(stream, 0xC4, [0x00, 0, 0, 0, 12, .. new byte[12], 0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
        Segment(stream, 0xC4, [0x10, 1, .. new byte[15], 0]);
        Segment(stream, 0xDA, [(byte)components.Length, .. Ids(components, i => [i, 0]), 0, 63, 0]);
        Scan(stream, (long)((width + 7) / 8) * ((height + 7) / 8), components);
        stream.Write([0xFF, 0xD9]);
    }

    private static IEnumerable<byte> Ids(byte[] components, Func<byte, byte[]> entry) =>
        Enumerable.Range(1, components.Length).SelectMany(i => entry((byte)i));

    private static byte[] Big(int value) => [(byte)(value >> 8), (byte)value];

    private static void Segment(Stream stream, byte marker, byte[] data)
    {
        stream.Write([0xFF, marker, .. Big(data.Length + 2)]);
        stream.Write(data);
    }

    private static void Scan(Stream stream, long blocks, byte[] components)
    {
        var (bits, count) = (0UL, 0);
        for (var block = 0L; block < blocks; block++)
        {
            foreach (var component in components)
            {
                // First block: the whole value; then no difference any more. Each ends with the one-bit end of block.
                var value = block == 0 ? 8 * (component - 128) : 0;
                var category = 0;
                for (var rest = Math.Abs(value); rest > 0; rest >>= 1)
                {
                    category++;
                }

                var extra = value < 0 ? value + (1 << category) - 1 : value;
                bits = (((bits << 4) | (uint)category) << (category + 1)) | ((uint)extra << 1);
                count += 5 + category;
                for (; count >= 8; count -= 8)
                {
                    Byte(stream, (byte)(bits >> (count - 8)));
                }
            }
        }

        Byte(stream, (byte)((bits << (8 - count)) | (0xFFUL >> count)));
    }

    private static void Byte(Stream stream, byte value)
    {
        stream.WriteByte(value);
        if (value == 0xFF)
        {
            stream.WriteByte(0);
        }
    }
}
