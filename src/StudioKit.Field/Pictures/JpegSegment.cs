namespace StudioKit.Field.Pictures;

/// <summary>One marker segment of a JPEG header (ISO/IEC 10918-1 annex B).</summary>
/// <param name="Marker">Second byte of the marker, e.g. 0xE1 for APP1.</param>
/// <param name="Data">Contents after the length field.</param>
internal readonly record struct JpegSegment(byte Marker, byte[] Data)
{
    public const byte StartOfImage = 0xD8;
    public const byte StartOfScan = 0xDA;
    public const byte QuantisationTables = 0xDB;
    public const byte App0 = 0xE0;
    public const byte App1 = 0xE1;
    public const byte App2 = 0xE2;
    public const byte App13 = 0xED;

    /// <summary>Reads the segments up to the first scan; what is damaged ends the list.</summary>
    public static List<JpegSegment> ReadHeader(Stream stream)
    {
        var segments = new List<JpegSegment>();
        if (stream.ReadByte() != 0xFF || stream.ReadByte() != StartOfImage)
        {
            return segments;
        }

        while (ReadMarker(stream) is { } marker && marker != StartOfScan)
        {
            var length = (stream.ReadByte() << 8) | stream.ReadByte();
            var data = new byte[Math.Max(0, length - 2)];
            if (length < 2 || stream.ReadAtLeast(data, data.Length, throwOnEndOfStream: false) < data.Length)
            {
                break;
            }

            segments.Add(new JpegSegment(marker, data));
        }

        return segments;
    }

    /// <summary>How coarsely a JPEG's brightness is stepped in a block of 8 by 8 pixels, in codes of 255; 0 where there is no table.</summary>
    public static double BrightnessStep(IEnumerable<JpegSegment> header)
    {
        var table = header.FirstOrDefault(segment => segment.Marker == QuantisationTables).Data;

        // The mean of a block is its first coefficient over eight. Tables are 8-bit, or 16-bit where the high half of the first byte says so.
        return table is null or { Length: < 3 } ? 0 : (table[0] < 16 ? table[1] : (table[1] << 8) | table[2]) / 8.0;
    }

    private static byte? ReadMarker(Stream stream)
    {
        if (stream.ReadByte() != 0xFF)
        {
            return null;
        }

        int next;
        do
        {
            next = stream.ReadByte();
        }
        while (next == 0xFF);

        return next < 0 ? null : (byte)next;
    }
}
