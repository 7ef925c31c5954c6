using SkiaSharp;
using StudioKit.Field;
using StudioKit.Field.Pictures;
using StudioKit.FieldFiles.Pictures.Jpeg;
using StudioKit.FieldFiles.Pictures.Png;
using StudioKit.FieldFiles.Pictures.Tiffs;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>Finds out what kind of picture a file is, and opens its rows.</summary>
internal static class PictureOpening
{
    // The decoder holds two bytes for each sample of a progressive JPEG.
    private const long MostProgressiveBytes = 400_000_000;

    // Four at a time of those below it take less than one of the largest.
    private const long LargeProgressiveBytes = 80_000_000;

    public static FieldResult<FramePicture> Open(string path)
    {
        var head = FirstBytes(path);
        return head switch
        {
            [] => new FieldDiagnostic("FLD002", path, "The file is empty."),
            [0xFF, 0xD8, 0xFF, ..] => Jpeg(path, FrameSettingsReader.Read(path), () => File.OpenRead(path)),
            [0x89, (byte)'P', (byte)'N', (byte)'G', ..] => Png(path),
            [(byte)'I', (byte)'I', 42 or 43, 0, ..] or [(byte)'M', (byte)'M', 0, 42 or 43, ..] => Tiff(path),
            [(byte)'I', (byte)'I', ..] or [(byte)'M', (byte)'M', ..] => Raw(path),
            [_, _, _, _, (byte)'f', (byte)'t', (byte)'y', (byte)'p'] => new FieldDiagnostic(
                "FLD003", path, $"{Kind(path)} is of the ISO base media kind (HEIF, AVIF, video, or a raw file in it), which cannot be read here.", Develop),
            _ => new FieldDiagnostic("FLD003", path, "This is not a JPEG, PNG or TIFF picture.", "A raw file must be developed to one of them first."),
        };
    }

    private const string Develop = "Save the picture as JPEG, PNG or TIFF first.";

    private static byte[] FirstBytes(string path)
    {
        using var stream = File.OpenRead(path);
        var head = new byte[8];
        return head[..stream.ReadAtLeast(head, head.Length, throwOnEndOfStream: false)];
    }

    private static FieldResult<FramePicture> Jpeg(string path, FrameSettings settings, Func<Stream> contents)
    {
        List<JpegSegment> header;
        using (var stream = contents())
        {
            header = JpegSegment.ReadHeader(stream);
        }

        if (header.Find(segment => segment.IsFrameHeader) is not { Data: not null } frame || SKCodec.Create(contents()) is not { } codec)
        {
            throw new InvalidDataException("It has no size.");
        }

        long held;
        try
        {
            PictureBounds.Check(codec.Info.Width, codec.Info.Height);
            held = ProgressiveBytes(frame);
        }
        catch
        {
            codec.Dispose();
            throw;
        }

        return new FramePicture(path, PictureFormat.Jpeg, new CodecRows(codec, held > LargeProgressiveBytes), settings, contents) { BrightnessStep = JpegSegment.BrightnessStep(header) };
    }

    private static long ProgressiveBytes(JpegSegment header)
    {
        if (!header.IsProgressive)
        {
            return 0;
        }

        var frame = JpegFrame.Read(header.Marker, header.Data);
        var bytes = frame.Components.Sum(component => 128L * frame.BlocksWide(component) * frame.BlocksHigh(component));
        if (bytes > MostProgressiveBytes)
        {
            throw new NotSupportedException(
                $"A progressive JPEG can only be read with all of it in memory, and this one would take {bytes / 1_000_000} MB of it, more than {MostProgressiveBytes / 1_000_000}. Save it as a baseline JPEG first.");
        }

        return bytes;
    }

    private static FramePicture Png(string path)
    {
        var file = PngFile.Read(path);
        PictureBounds.Check(file.Header.Width, file.Header.Height);
        return new FramePicture(path, PictureFormat.Png, new PngRows(file), FrameSettingsReader.Read(path), () => File.OpenRead(path));
    }

    private static FieldResult<FramePicture> Tiff(string path)
    {
        using var stream = File.OpenRead(path);
        var layout = TiffLayout.Read(stream);
        if (!RawPreview.IsRaw(layout))
        {
            return new FramePicture(path, PictureFormat.Tiff, TiffRows.Open(path), FrameSettingsReader.Read(path), () => File.OpenRead(path));
        }

        return RawPreview.Of(layout, stream) is not { } preview ? Raw(path) : Jpeg(
            path,
            FrameSettingsReader.Read(path) with { RecordedPixels = preview.RawPixels, IsPreview = true },
            () => new FileSection(path, preview.Start, preview.Length));
    }

    private static FieldDiagnostic Raw(string path) =>
        new("FLD007", path, $"{Kind(path)} is a raw file, and no preview that can be read was found in it.", Develop);

    private static string Kind(string path) => Path.GetExtension(path) is { Length: > 1 } extension ? $"This {extension.ToLowerInvariant()} file" : "This file";
}
