using StudioKit.Field;
using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;
using StudioKit.FieldFiles.Metadata;
using StudioKit.FieldFiles.Pictures;
using StudioKit.Writing;

namespace StudioKit.FieldFiles.Scale;

/// <summary>Makes a copy of a picture with a scale bar in a corner, everything else in it as it is, and an XMP sidecar beside it.</summary>
public static class ScaledCopy
{
    private const long LargestClean = 200_000_000;

    /// <summary>Makes one copy.</summary>
    /// <param name="job">What to do.</param>
    /// <param name="files">Files of the run, the copy and its sidecar among them; whoever opened them commits them.</param>
    /// <returns>The copy, or why there is none.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The scale is not above zero.</exception>
    /// <exception cref="FileWritingException">The copy cannot be written.</exception>
    /// <exception cref="OperationCanceledException">The run was stopped.</exception>
    public static FieldResult<ScaledPicture> Make(ScaleJob job, FileBatch files)
    {
        ArgumentNullException.ThrowIfNull(job);
        ArgumentNullException.ThrowIfNull(files);
        return FramePicture.With(job.Source, picture => Make(job, files, picture));
    }

    private static FieldResult<ScaledPicture> Make(ScaleJob job, FileBatch files, FramePicture picture)
    {
        var seen = new SeenPicture(picture.Settings.Orientation, picture.Width, picture.Height);
        if (ScaleBarPlace.For(seen, job.Scale.MetresPerPixel, job.Corner, ScaleBarImage.LabelWidth) is not { } place)
        {
            return new FieldDiagnostic(
                "FLD314", job.Source, FormattableString.Invariant($"The picture, {picture.Width} x {picture.Height} pixels, is too small for a bar whose length can be read."));
        }

        try
        {
            var opened = BarredCopies.Open(picture, ScaleBarImage.Box(seen, place));
            using var copy = opened.Value;
            return copy is null ? FieldResult<ScaledPicture>.Refused(opened.Diagnostics) : Write(job, files, picture, copy, seen, place);
        }
        catch (InvalidDataException error)
        {
            return new FieldDiagnostic("FLD005", job.Source, $"The picture is damaged or breaks off. {error.Message}", "Copy it from the card again.");
        }
        catch (NotSupportedException error)
        {
            return new FieldDiagnostic("FLD315", job.Source, error.Message);
        }
    }

    private static FieldResult<ScaledPicture> Write(
        ScaleJob job, FileBatch files, FramePicture picture, IBarredCopy copy, SeenPicture seen, ScaleBarPlace place)
    {
        var white = ScaleBarPlace.IsWhiteOn(copy.Brightness);
        if (job.IsClean && new FileInfo(job.Source).Length > LargestClean)
        {
            return new FieldDiagnostic("FLD372", job.Source, FormattableString.Invariant($"The picture is larger than {LargestClean / 1_000_000} MB, too large to be cleaned."), "Save it as a JPEG first, which is far smaller.");
        }

        files.Write(job.Target, target => Write(job, copy, ScaleBarImage.Draw(seen, place, white), target));
        files.Write(job.Sidecar, ScaleSidecar.Write(Recorded(job, picture, place.Bar), place.Bar.Label));
        return new ScaledPicture(job.Target, job.Sidecar, place.Bar, white) { Changes = copy.Changes };
    }

    // Cleaning wants the whole copy at hand.
    private static void Write(ScaleJob job, IBarredCopy copy, BarStamp stamp, Stream target)
    {
        if (!job.IsClean)
        {
            copy.Write(stamp, target);
            return;
        }

        using var whole = new MemoryStream();
        copy.Write(stamp, whole);
        if (CleanPicture.Copy(whole, job.Source, target) is { } refusal)
        {
            throw new NotSupportedException(refusal.Message);
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
            Source = job.IsClean ? "" : Path.GetFileName(job.Source),
            Origin = job.IsClean ? "" : ScaleBasisText.Of(job.Scale),
            Kit = job.IsClean ? "" : framed?.Kit ?? "",
            Framing = job.IsClean ? "" : framed?.Framing ?? "",
            Magnification = framed?.Magnification,
        };
    }
}
