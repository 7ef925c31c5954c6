using System.Buffers.Binary;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Carries metadata and colour profile over from the original to a newly encoded picture, byte for byte.</summary>
internal static class MetadataSplice
{
    private static readonly string[] PngKept = ["iCCP", "sRGB", "gAMA", "cHRM", "cICP", "pHYs", "eXIf", "tEXt", "iTXt", "zTXt", "tIME"];

    public static void Copy(string source, PictureFormat format, Stream encoded, Stream target)
    {
        switch (format)
        {
            case PictureFormat.Jpeg:
                CopyJpeg(source, encoded, target);
                break;
            case PictureFormat.Png:
                CopyPng(source, encoded, target);
                break;
            default:
                encoded.CopyTo(target);
                break;
        }
    }

    // APP0 to APP13 and comments come from the original; APP14 tells how the original's own components are coded and must not.
    private static void CopyJpeg(string source, Stream encoded, Stream target)
    {
        using var original = File.OpenRead(source);
        var header = JpegSegment.ReadHeader(original);
        var isRgb = header.Exists(segment => segment.IsFrameHeader && segment.Data is { Length: > 5 } data && data[5] == 3);
        target.Write([0xFF, JpegSegment.StartOfImage]);
        foreach (var segment in header.Where(segment => IsKept(segment) && (isRgb || !segment.IsColourProfile)))
        {
            segment.WriteTo(target);
        }

        foreach (var segment in JpegSegment.ReadHeader(encoded).Where(segment => segment.Marker is < JpegSegment.App0 or > 0xEF and not JpegSegment.Comment))
        {
            segment.WriteTo(target);
        }

        target.Write([0xFF, JpegSegment.StartOfScan]);
        encoded.CopyTo(target);
    }

    private static bool IsKept(JpegSegment segment) =>
        segment.Marker is (>= JpegSegment.App0 and <= JpegSegment.App13) or JpegSegment.Comment && !segment.IsPreviewList;

    private static void CopyPng(string source, Stream encoded, Stream target)
    {
        using var original = File.OpenRead(source);
        var kept = PngChunks(original).Where(chunk => PngKept.Contains(chunk.Type, StringComparer.Ordinal)).ToList();
        target.Write([0x89, (byte)'P', (byte)'N', (byte)'G', 13, 10, 26, 10]);
        foreach (var (type, bytes) in PngChunks(encoded).Where(chunk => !PngKept.Contains(chunk.Type, StringComparer.Ordinal)))
        {
            target.Write(bytes);
            if (type == "IHDR")
            {
                kept.ForEach(chunk => target.Write(chunk.Bytes));
            }
        }
    }

    private static IEnumerable<(string Type, byte[] Bytes)> PngChunks(Stream stream)
    {
        stream.Position = 8;
        var head = new byte[8];
        while (stream.ReadAtLeast(head, 8, throwOnEndOfStream: false) == 8)
        {
            var length = BinaryPrimitives.ReadInt32BigEndian(head);
            if (length < 0 || length > stream.Length - stream.Position)
            {
                yield break;
            }

            var chunk = new byte[12 + length];
            head.CopyTo(chunk, 0);
            stream.ReadExactly(chunk, 8, length + 4);
            yield return (System.Text.Encoding.ASCII.GetString(head, 4, 4), chunk);
        }
    }
}
