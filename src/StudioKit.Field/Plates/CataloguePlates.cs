using StudioKit.Field.Log;
using StudioKit.Field.Log.Release;
using StudioKit.Field.Scale;
using StudioKit.Physics;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Plates;

/// <summary>Lays portraits out on pages, at one common true scale or each as large as fits.</summary>
public static class CataloguePlates
{
    // Names of genera and of what is below them are italic; of a record without a rank it is taken for granted.
    private static readonly string[] Italic = ["", "genus", "subgenus", "species", "subspecies", "variety", "form"];

    /// <summary>Lays out the pages.</summary>
    /// <param name="pictures">Portraits, in order.</param>
    /// <param name="format">Paper.</param>
    /// <param name="isCommonScale">Whether all portraits of all pages are to be compared at one scale; otherwise each fills its place.</param>
    /// <remarks>A portrait n pixels wide of p metres each is n·p wide in life; the common scale is the largest at which all fit their places.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">A picture's size or scale is not above zero, or the format leaves no place for pictures.</exception>
    [Source("Derived", "pixels times pixel size times print scale")]
    public static IReadOnlyList<CataloguePlate> LayOut(IReadOnlyList<PlatePicture> pictures, PlateFormat format, bool isCommonScale)
    {
        ArgumentNullException.ThrowIfNull(pictures);
        ArgumentNullException.ThrowIfNull(format);
        var (width, height) = (PlaceWidth(format), PlaceHeight(format));
        var scales = pictures.Select(picture => LargestScale(picture, width, height)).ToList();
        double? common = isCommonScale && scales.Count > 0 ? scales.Min() : null;
        return
        [
            .. pictures.Select((picture, i) => (picture, Scale: common ?? scales[i])).Chunk(format.Columns * format.Rows)
                .Select(page => new CataloguePlate(format, [.. page.Select((entry, i) => Place(entry.picture, entry.Scale, i, format))], common)),
        ];
    }

    /// <summary>Portraits of a log's frames that have a scale, captioned from the log, and what is left out.</summary>
    /// <param name="release">What of the log may be told.</param>
    /// <param name="fileOf">A frame's file, or why it cannot be shown.</param>
    /// <remarks>The sidecar of the file at hand goes before the log, which may tell of the original: a copy can be cropped or smaller.</remarks>
    public static PlateSelection FromLog(LogRelease release, Func<FieldFrame, (PlateFile? File, PlateOmissionReason Fault)> fileOf)
    {
        ArgumentNullException.ThrowIfNull(release);
        ArgumentNullException.ThrowIfNull(fileOf);
        var (pictures, leftOut, kept) = (new List<PlatePicture>(), new List<PlateOmission>(), new HashSet<string>(StringComparer.Ordinal));
        foreach (var (session, subject, frame) in from session in release.Sessions from subject in session.Subjects from frame in subject.Frames select (session, subject, frame))
        {
            var (file, fault) = fileOf(frame.Frame);
            if (file is null || (file.Recorded?.MicrometresPerPixel ?? frame.Frame.MicrometresPerPixel) is not { } scale)
            {
                leftOut.Add(new PlateOmission(frame.FileName, file is null ? fault : PlateOmissionReason.NoScale));
                continue;
            }

            pictures.Add(new PlatePicture(
                file.Path, file.Seen.Wide, file.Seen.High, scale * 1e-6, Name(subject.Record), [.. Caption(frame.Record, subject.Record, session.Record)])
            {
                FileName = frame.FileName,
                HasBar = file.Recorded is { HasBar: true },
                IsScientific = subject.Record["scientificName"].Length > 0 && Italic.Contains(subject.Record["taxonRank"], StringComparer.OrdinalIgnoreCase),
            });
            if (subject.Subject.Sensitivity != PlaceSensitivity.Open)
            {
                kept.Add(frame.Frame.SubjectId);
            }
        }

        return new PlateSelection(pictures, leftOut, kept.Count);
    }

    private static double PlaceWidth(PlateFormat format) =>
        Guard.Positive((format.PageWidth - (2 * format.Margin) - ((format.Columns - 1) * format.Gap)) / format.Columns, nameof(format));

    private static double PlaceHeight(PlateFormat format) => Guard.Positive(
        ((format.PageHeight - (2 * format.Margin) - ((format.Rows - 1) * format.Gap)) / format.Rows) - format.CaptionHeight, nameof(format));

    private static double LargestScale(PlatePicture picture, double width, double height)
    {
        var millimetres = 1000 * Guard.Positive(picture.MetresPerPixel);
        return Math.Min(width / (Guard.Positive(picture.PixelsWide) * millimetres), height / (Guard.Positive(picture.PixelsHigh) * millimetres));
    }

    private static PlatePlace Place(PlatePicture picture, double scale, int index, PlateFormat format)
    {
        var (width, height) = (PlaceWidth(format), PlaceHeight(format));
        var onPaper = 1000 * picture.MetresPerPixel * scale;
        var (wide, high) = (picture.PixelsWide * onPaper, picture.PixelsHigh * onPaper);
        var left = format.Margin + (index % format.Columns * (width + format.Gap));
        var top = format.Margin + (index / format.Columns * (height + format.CaptionHeight + format.Gap));
        var bar = ScaleBar.For(picture.MetresPerPixel, picture.PixelsWide);

        // In the middle across, standing on the caption.
        return new PlatePlace(picture, left + ((width - wide) / 2), top + height - high, wide, high, scale, bar, 1000 * bar.Length * scale)
        {
            PlaceLeft = left,
            PlaceWidth = width,
        };
    }

    private static string Name(ReleasedRecord subject)
    {
        var name = $"{subject["scientificName"]} {subject["identificationQualifier"]}".Trim();
        return name.Length > 0 ? name : subject["vernacularName"];
    }

    private static IEnumerable<string> Caption(ReleasedRecord frame, ReleasedRecord subject, ReleasedRecord session)
    {
        var about = string.Join(", ", new[] { subject["sex"], subject["lifeStage"], frame["title"] }.Where(text => text.Length > 0));
        var place = session["locality"].Length > 0 ? session["locality"] : session["countryCode"];
        var when = (frame["created"].Length > 0 ? frame["created"] : session["eventDate"]).Split('T', '/')[0];
        return new[] { about, place.Length > 0 ? $"{place}, {when}" : when, frame["creator"] }.Where(line => line.Length > 0);
    }
}
