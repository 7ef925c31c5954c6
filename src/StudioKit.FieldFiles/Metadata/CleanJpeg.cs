using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Metadata;

/// <summary>Copies a JPEG without what it tells of itself; its coded picture stays byte for byte (ISO/IEC 10918-1 annex B).</summary>
internal static class CleanJpeg
{
    private const byte EndOfImage = 0xD9;
    private const byte App14 = 0xEE;
    private const byte App15 = 0xEF;

    // JFIF 1.02: name, version, density in nine bytes more, then a small picture's size.
    private const int JfifHead = 14;

    /// <summary>Copies the picture up to its end; what follows, such as further pictures, does not come along.</summary>
    /// <param name="source">The file.</param>
    /// <param name="target">Where to; none to look at its head alone.</param>
    /// <returns>What was taken out; none where the file is damaged.</returns>
    public static TellingMetadata? Copy(Stream source, Stream? target)
    {
        source.Position = 0;
        var buffered = new BufferedStream(source, 1 << 16);
        if (buffered.ReadByte() != 0xFF || buffered.ReadByte() != JpegSegment.StartOfImage)
        {
            return null;
        }

        target?.Write([0xFF, JpegSegment.StartOfImage]);
        var found = TellingMetadata.None;
        for (var marker = Marker(buffered); marker is { } mark && mark != EndOfImage;)
        {
            if (Segment(buffered, mark) is not { } segment)
            {
                return null;
            }

            if (mark == JpegSegment.StartOfScan && target is null)
            {
                return found;
            }

            if (!JpegShape.IsSound(segment))
            {
                return null;
            }

            Cleaned(segment, ref found)?.WriteTo(target ?? Stream.Null);
            marker = mark == JpegSegment.StartOfScan ? Scan(buffered, target!) : Marker(buffered);
            if (marker is null)
            {
                return null;
            }
        }

        target?.Write([0xFF, EndOfImage]);
        return found;
    }

    /// <summary>The segment as it stays; none where it does not.</summary>
    private static JpegSegment? Cleaned(JpegSegment segment, ref TellingMetadata found)
    {
        var data = segment.Data.AsSpan();
        switch (segment.Marker)
        {
            case JpegSegment.App0 when data.StartsWith("JFIF\0"u8) && data.Length >= JfifHead:
                found |= data.Length > JfifHead ? TellingMetadata.EmbeddedPicture : TellingMetadata.None;
                return segment with { Data = [.. data[..(JfifHead - 2)], 0, 0] };
            case 0xE1 when data.StartsWith("Exif\0\0"u8):
                return Block(segment, ref found);
            case JpegSegment.App2 when segment.IsColourProfile:
                return segment;
            case App14 when data.StartsWith("Adobe"u8) && data.Length == 12:
                return segment;
            case (>= JpegSegment.App0 and <= App15) or JpegSegment.Comment:
                found |= segment.IsPreviewList ? TellingMetadata.EmbeddedPicture : TextKind.Of(data);
                return null;
            default:
                return segment;
        }
    }

    private static JpegSegment? Block(JpegSegment segment, ref TellingMetadata found)
    {
        using var block = new MemoryStream(segment.Data[6..]);
        if (CleanTiff.OfBlock(block) is not { } clean)
        {
            // Whatever it is, it does not come along.
            found |= TellingMetadata.Text;
            return null;
        }

        found |= clean.Found;
        using var written = new MemoryStream();
        written.Write("Exif\0\0"u8);
        clean.Write(written);
        return segment with { Data = written.ToArray() };
    }

    private static JpegSegment? Segment(Stream stream, byte marker)
    {
        var length = (stream.ReadByte() << 8) | stream.ReadByte();
        var data = new byte[Math.Max(0, length - 2)];
        return length < 2 || stream.ReadAtLeast(data, data.Length, throwOnEndOfStream: false) < data.Length ? null : new JpegSegment(marker, data);
    }

    private static byte? Marker(Stream stream)
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

        return next <= 0 ? null : (byte)next;
    }

    // Coded data up to the marker that ends it: a zero behind 0xFF belongs to the data, and so do restart marks.
    private static byte? Scan(Stream stream, Stream target)
    {
        for (var value = stream.ReadByte(); value >= 0; value = stream.ReadByte())
        {
            if (value != 0xFF)
            {
                target.WriteByte((byte)value);
                continue;
            }

            var next = stream.ReadByte();
            while (next == 0xFF)
            {
                next = stream.ReadByte();
            }

            if (next is not (0 or (>= 0xD0 and <= 0xD7)))
            {
                return next < 0 ? null : (byte)next;
            }

            target.Write([0xFF, (byte)next]);
        }

        return null;
    }
}
