using SkiaSharp;
using StudioKit.Field;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Pictures;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Makes a copy of a picture with a scale bar in a corner, its metadata and colour profile kept, and an XMP sidecar beside it.</summary>
public static class ScaledCopy
{
    // Above this a second compression is not seen; the file grows fast beyond.
    private const int Quality = 95;

    /// <summary>Makes one copy.</summary>
    /// <param name="job">What to do.</param>
    /// <returns>The copy, or why there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The scale is not above zero.</exception>
    public static FieldResult<ScaledPicture> Make(ScaleJob job)
    {
        ArgumentNullException.ThrowIfNull(job);
        return Refusal(job) is { } refusal ? refusal : FramePicture.With(job.Source, picture => Make(job, picture));
    }

    private static FieldResult<ScaledPicture> Make(ScaleJob job, FramePicture picture)
    {
        using var bitmap = new SKBitmap(new SKImageInfo(picture.Width, picture.Height, SKColorType.Rgba8888, SKAlphaType.Unpremul));
        if (Decode(picture, bitmap) is { } broken)
        {
            return broken;
        }

        var (bar, white) = ScaleBarImage.Draw(bitmap, picture.Settings.Orientation, job);
        return Write(job, picture, bitmap, bar, white);
    }

    private static FieldDiagnostic? Refusal(ScaleJob job)
    {
        if (Path.GetFullPath(job.Source) == Path.GetFullPath(job.Target))
        {
            return new FieldDiagnostic("FLD311", job.Target, "The copy would replace the original, which is never changed.");
        }

        return !job.Replace && File.Exists(job.Target)
            ? new FieldDiagnostic("FLD312", job.Target, "The file is already there.", "Give another name, or say that it may be replaced.")
            : null;
    }

    private static unsafe FieldDiagnostic? Decode(FramePicture picture, SKBitmap bitmap)
    {
        var rowBytes = picture.Width * 4;
        var target = (byte*)bitmap.GetPixels();
        return picture.Read(band =>
        {
            var place = new Span<byte>(target + ((long)band.FirstRow * rowBytes), band.Rows * rowBytes);
            band.Rgba.AsSpan(0, place.Length).CopyTo(place);
        });
    }

    private static FieldResult<ScaledPicture> Write(ScaleJob job, FramePicture picture, SKBitmap bitmap, ScaleBar bar, bool white)
    {
        var sidecar = ScaleSidecar.PathBeside(job.Target);
        try
        {
            using (var encoded = new MemoryStream())
            {
                Encode(bitmap, picture.Format, encoded);
                encoded.Position = 0;
                WholeFile.Write(job.Target, target => MetadataSplice.Copy(job.Source, picture.Format, encoded, target));
            }

            WholeFile.Write(sidecar, target => target.Write(ScaleSidecar.Write(Recorded(job, picture, bar), bar.Label)));
            return new ScaledPicture(job.Target, sidecar, bar, white);
        }
        catch (Exception error) when (error is IOException or UnauthorizedAccessException)
        {
            return new FieldDiagnostic("FLD313", job.Target, "The copy cannot be written: " + error.Message);
        }
    }

    private static RecordedScale Recorded(ScaleJob job, FramePicture picture, ScaleBar bar)
    {
        var framed = job.Scale.Basis as ScaleBasis.Framed;
        return new RecordedScale
        {
            MicrometresPerPixel = job.Scale.MetresPerPixel * 1e6,
            RelativeUncertainty = job.Scale.RelativeUncertainty,
            BarLengthMicrometres = bar.Length * 1e6,
            Pixels = new PixelDimensions(picture.Width, picture.Height),
            Source = Path.GetFileName(job.Source),
            Origin = ScaleBasisText.Of(job.Scale),
            Kit = framed?.Kit ?? "",
            Framing = framed?.Framing ?? "",
            Magnification = framed?.Magnification,
        };
    }

    // A TIFF's copy is a PNG, the lossless format that can be written here.
    private static void Encode(SKBitmap bitmap, PictureFormat format, Stream target)
    {
        using var pixels = bitmap.PeekPixels();
        if (format == PictureFormat.Jpeg)
        {
            // Unpremultiplied opaque pixels; alpha plays no part in JPEG.
            pixels.WithAlphaType(SKAlphaType.Opaque).Encode(target, new SKJpegEncoderOptions(Quality));
        }
        else
        {
            pixels.Encode(target, new SKPngEncoderOptions(SKPngEncoderFilterFlags.AllFilters, 4));
        }
    }
}
