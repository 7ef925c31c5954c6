using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Metadata;

/// <summary>Whether a segment is as long as its contents ask (ISO/IEC 10918-1 annex B), so that nothing rides along behind them.</summary>
internal static class JpegShape
{
    public static bool IsSound(JpegSegment segment)
    {
        var data = segment.Data.AsSpan();
        return segment.Marker switch
        {
            JpegSegment.StartOfScan => data.Length > 0 && data.Length == 4 + (2 * data[0]),
            JpegSegment.QuantisationTables => IsFilled(data, table => 1 + (table[0] < 16 ? 64 : 128)),
            0xC4 => IsFilled(data, table => table.Length < 17 ? int.MaxValue : 17 + Sum(table[1..17])),
            0xCC => data.Length % 2 == 0,
            0xDC or 0xDD => data.Length == 2,
            (>= JpegSegment.App0 and <= 0xEF) or JpegSegment.Comment => true,
            _ => segment.IsFrameHeader && data.Length > 5 && data.Length == 6 + (3 * data[5]),
        };
    }

    /// <summary>Whether a JPEG's head, or tables alone, holds nothing but what it is coded with.</summary>
    public static bool IsQuiet(byte[] head)
    {
        using var stream = new MemoryStream(head);
        return JpegSegment.ReadHeader(stream).TrueForAll(segment => !segment.IsAbout || IsCoding(segment));
    }

    // JFIF 1.02 without a small picture, and the colour transform of APP14.
    private static bool IsCoding(JpegSegment segment) =>
        (segment.Marker == JpegSegment.App0 && segment.Data.AsSpan().StartsWith("JFIF\0"u8) && segment.Data.Length == 14)
        || (segment.Marker == 0xEE && segment.Data.AsSpan().StartsWith("Adobe"u8) && segment.Data.Length == 12);

    private static bool IsFilled(ReadOnlySpan<byte> data, Func<ReadOnlySpan<byte>, int> length)
    {
        while (data.Length > 0)
        {
            var one = length(data);
            if (one > data.Length)
            {
                return false;
            }

            data = data[one..];
        }

        return true;
    }

    private static int Sum(ReadOnlySpan<byte> counts)
    {
        var sum = 0;
        foreach (var count in counts)
        {
            sum += count;
        }

        return sum;
    }
}
