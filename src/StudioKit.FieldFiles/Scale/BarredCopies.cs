using StudioKit.Field;
using StudioKit.FieldFiles.Pictures;
using StudioKit.FieldFiles.Pictures.Jpeg;
using StudioKit.FieldFiles.Pictures.Png;
using StudioKit.FieldFiles.Pictures.Tiffs;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Makes pictures of every format ready to be copied with a bar on them.</summary>
internal static class BarredCopies
{
    /// <summary>Makes a picture ready.</summary>
    /// <param name="picture">The picture; its rows must not have been read yet.</param>
    /// <param name="box">Where the bar will lie.</param>
    /// <returns>The copy to be, or where the picture breaks off.</returns>
    /// <exception cref="InvalidDataException">The picture is damaged.</exception>
    /// <exception cref="NotSupportedException">It is of a kind that cannot be copied as it is.</exception>
    public static FieldResult<IBarredCopy> Open(FramePicture picture, StoredBox box)
    {
        if (picture.Format == PictureFormat.Jpeg)
        {
            return FieldResult<IBarredCopy>.Sound(Jpeg(picture, box), []);
        }

        var brightness = new BoxBrightness(box);
        if (picture.Read(brightness.Visit) is { } broken)
        {
            return broken;
        }

        IBarredCopy copy = picture.Format == PictureFormat.Png
            ? new PngCopy(PngFile.Read(picture.Name), brightness.Mean, MetadataSplice.IsKept)
            : TiffCopy.Open(picture.Name, brightness.Mean);
        return FieldResult<IBarredCopy>.Sound(copy, []);
    }

    private static IBarredCopy Jpeg(FramePicture picture, StoredBox box)
    {
        List<JpegSegment> header;
        using (var stream = picture.Contents())
        {
            header = JpegSegment.ReadHeader(stream);
        }

        var start = header.Find(segment => segment.IsFrameHeader);
        var frame = start.Data is null ? throw new InvalidDataException("It has no size.") : JpegFrame.Read(start.Marker, start.Data);
        return frame.IsProgressive
            ? ProgressiveJpegCopy.Open(picture.Contents, frame, header, box, MetadataSplice.Kept)
            : SequentialJpegCopy.Open(picture.Contents, box, MetadataSplice.Kept);
    }
}
