namespace StudioKit.FieldFiles.Pictures;

/// <summary>One marker segment of a JPEG header (ISO/IEC 10918-1 annex B).</summary>
/// <param name="Marker">Second byte of the marker, e.g. 0xE1 for APP1.</param>
/// <param name="Data">Contents after the length field.</param>
internal readonly record struct JpegSegment(byte Marker, byte[] Data)
{
    public const byte StartOfImage = 0xD8;
    public const byte FirstRestart = 0xD0;
    public const byte EndOfImage = 0xD9;
    public const byte StartOfScan = 0xDA;
    public const byte QuantisationTables = 0xDB;
    public const byte HuffmanTables = 0xC4;
    public const byte NumberOfLines = 0xDC;
    public const byte RestartInterval = 0xDD;
    public const byte App0 = 0xE0;
    public const byte App2 = 0xE2;
    public const byte App13 = 0xED;
    public const byte Comment = 0xFE;

    /// <summary>Whether it is a frame header, which says how many components there are.</summary>
    public bool IsFrameHeader => Marker is >= 0xC0 and <= 0xCF and not (0xC4 or 0xC8 or 0xCC);

    /// <summary>Whether it is the header of a frame that comes in ever finer scans.</summary>
    public bool IsProgressive => Marker == 0xC2;

    /// <summary>Whether it tells of the picture rather than of how it is coded: an application's segment or a comment.</summary>
    public bool IsAbout => Marker is (>= App0 and <= 0xEF) or Comment;

    /// <summary>Whether a marker comes without contents.</summary>
    public static bool StandsAlone(byte marker) => marker is 0x01 or (>= FirstRestart and <= StartOfImage);

    /// <summary>Whether it is part of a colour profile (ICC.1 annex B.4).</summary>
    public bool IsColourProfile => Marker == App2 && Data.AsSpan().StartsWith("ICC_PROFILE\0"u8);

    /// <summary>Whether it lists pictures that follow the first one in the same file (CIPA DC-007); a copy has none.</summary>
    public bool IsPreviewList => Marker == App2 && Data.AsSpan().StartsWith("MPF\0"u8);

    /// <summary>What a copy of the first picture leaves out, one sentence each.</summary>
    public static IReadOnlyList<string> LeftOut(IEnumerable<JpegSegment> header) =>
        header.Any(segment => segment.IsPreviewList) ? ["Smaller pictures that follow the first one in the file are left out."] : [];

    /// <summary>Writes the segment with its marker and length.</summary>
    public void WriteTo(Stream stream)
    {
        var length = Data.Length + 2;
        stream.Write([0xFF, Marker, (byte)(length >> 8), (byte)length]);
        stream.Write(Data);
    }

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
