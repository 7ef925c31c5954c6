using StudioKit.Field.Pictures;

namespace StudioKit.FieldFiles.Pictures.Tiffs;

/// <summary>The picture that a camera keeps inside a raw file to show on its screen.</summary>
/// <param name="Start">Where its JPEG begins.</param>
/// <param name="Length">Bytes of it.</param>
/// <param name="RawPixels">Pixels of the raw picture itself.</param>
internal sealed record RawPreview(long Start, long Length, PixelDimensions RawPixels)
{
    /// <summary>Whether a TIFF is a raw file: some picture in it is of single colours behind a filter, or not developed (ISO 12234-2).</summary>
    public static bool IsRaw(TiffLayout layout) => layout.Directories.Any(directory => IsRaw(layout, directory));

    /// <summary>The largest preview in a raw file; none where there is none that is a JPEG.</summary>
    public static RawPreview? Of(TiffLayout layout, Stream stream)
    {
        var raw = layout.Directories.Where(directory => IsRaw(layout, directory)).Select(directory => Size(layout, directory)).MaxBy(size => size.Longer);
        return layout.Directories.Where(directory => !IsRaw(layout, directory)).SelectMany(directory => Jpegs(layout, directory))
            .Where(jpeg => IsJpeg(stream, jpeg.Start, jpeg.Length))
            .Select(jpeg => new RawPreview(jpeg.Start, jpeg.Length, raw))
            .MaxBy(preview => preview.Length);
    }

    private static bool IsRaw(TiffLayout layout, TiffDirectory directory) =>
        layout.Value(directory, TiffTags.Photometric) is TiffTags.ColourFilterArray or TiffTags.LinearRaw;

    private static PixelDimensions Size(TiffLayout layout, TiffDirectory directory) =>
        new((int)(layout.Value(directory, TiffTags.Width) ?? 0), (int)(layout.Value(directory, TiffTags.Height) ?? 0));

    private static IEnumerable<(long Start, long Length)> Jpegs(TiffLayout layout, TiffDirectory directory)
    {
        if (layout.Value(directory, TiffTags.PreviewOffset) is { } start && layout.Value(directory, TiffTags.PreviewLength) is { } length)
        {
            yield return (start, length);
        }

        if (layout.Value(directory, TiffTags.Compression) is TiffTags.Jpeg or TiffTags.OldJpeg
            && layout.Values(directory, TiffTags.StripOffsets) is [var strip] && layout.Values(directory, TiffTags.StripByteCounts) is [var bytes])
        {
            yield return (strip, bytes);
        }
    }

    private static bool IsJpeg(Stream stream, long start, long length)
    {
        if (start <= 0 || length < 4 || start > stream.Length - length)
        {
            return false;
        }

        var head = new byte[3];
        stream.Position = start;
        stream.ReadExactly(head);
        return head is [0xFF, JpegSegment.StartOfImage, 0xFF];
    }
}
