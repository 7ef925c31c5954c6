using System.Globalization;
using MetadataExtractor;
using MetadataExtractor.Formats.Exif;
using MetadataExtractor.Formats.Tiff;
using MetadataExtractor.IO;
using MetadataExtractor.Util;
using StudioKit.Field.Pictures;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.FieldFiles.Pictures;

/// <summary>Reads the settings of a frame from its Exif block, believing only what can be true.</summary>
internal static class FrameSettingsReader
{
    // Date tags hold "2026:05:09 14:03:20"; a camera whose clock was never set writes zeros or blanks.
    private const string ExifDate = "yyyy:MM:dd HH:mm:ss";

    // OffsetTimeOriginal and OffsetTime (Exif 2.31); the reading library of this version has no names for them.
    private const int OffsetTimeOriginal = 0x9011;
    private const int OffsetTime = 0x9010;

    public static FrameSettings Read(string path)
    {
        try
        {
            return Damage.Told(() => From(ReadAll(path)));
        }
        catch (Exception error) when (error is ImageProcessingException or MetadataException)
        {
            return new FrameSettings { Doubts = [$"The settings could not be read: {error.Message}"] };
        }
        catch (InvalidDataException)
        {
            return new FrameSettings { Doubts = ["The settings could not be read: they are damaged."] };
        }
        catch (IOException)
        {
            // A file cut short inside its metadata still may hold a picture; decoding it decides.
            return new FrameSettings { Doubts = ["The settings could not be read: the file ends inside them."] };
        }
    }

    // Left to itself the library holds all of a TIFF up to its directory, which mostly stands at the end.
    private static IReadOnlyList<MetadataExtractor.Directory> ReadAll(string path)
    {
        using var stream = File.OpenRead(path);
        if (FileTypeDetector.DetectFileType(stream) is var type && type is FileType.Jpeg or FileType.Png or FileType.Unknown)
        {
            return ImageMetadataReader.ReadMetadata(path);
        }

        var directories = new List<MetadataExtractor.Directory>();
        TiffReader.ProcessTiff(new IndexedSeekingReader(stream), new ExifTiffHandler(directories));
        return directories;
    }

    private static FrameSettings From(IReadOnlyList<MetadataExtractor.Directory> directories)
    {
        var doubts = new List<string>();
        var main = directories.OfType<ExifIfd0Directory>().FirstOrDefault();
        var taking = directories.OfType<ExifSubIfdDirectory>().FirstOrDefault();

        return new FrameSettings
        {
            Shutter = Positive(taking, ExifDirectoryBase.TagExposureTime, "exposure time", doubts) is { } t ? new ShutterSpeed(t) : null,
            Aperture = Positive(taking, ExifDirectoryBase.TagFNumber, "f-number", doubts) is { } n ? new FNumber(n) : null,
            Iso = Positive(taking, ExifDirectoryBase.TagIsoEquivalent, "ISO speed", doubts) is { } s ? new IsoSpeed(s) : null,
            FocalLength = Positive(taking, ExifDirectoryBase.TagFocalLength, "focal length", doubts) is { } f
                ? Length.FromMillimeters(f) : null,
            TakenLocal = ReadDate(taking ?? (MetadataExtractor.Directory?)main, doubts),
            ClockOffset = ReadOffset(taking),
            RecordedPixels = ReadPixels(taking),
            Orientation = ReadOrientation(main, doubts),
            Camera = CameraName(main),
            Lens = Text(taking, ExifDirectoryBase.TagLensModel),
            Description = Text(main, ExifDirectoryBase.TagImageDescription),
            Doubts = doubts,
        };
    }

    private static double? Positive(MetadataExtractor.Directory? directory, int tag, string name, List<string> doubts)
    {
        if (directory is null || !directory.ContainsTag(tag))
        {
            return null;
        }

        if (Number(directory, tag) is { } value && double.IsFinite(value) && value > 0)
        {
            return value;
        }

        doubts.Add($"The file gives '{directory.GetString(tag)}' as {name}, which cannot be; it is not used.");
        return null;
    }

    // Ratios are divided here: the library's own conversion goes through single precision.
    private static double? Number(MetadataExtractor.Directory directory, int tag) =>
        directory.TryGetRational(tag, out var ratio) ? (double)ratio.Numerator / ratio.Denominator
        : directory.TryGetDouble(tag, out var number) ? number
        : null;

    private static DateTime? ReadDate(MetadataExtractor.Directory? directory, List<string> doubts)
    {
        var text = directory is null ? "" : Text(directory, ExifDirectoryBase.TagDateTimeOriginal);
        if (text.Length == 0)
        {
            return null;
        }

        if (DateTime.TryParseExact(text, ExifDate, CultureInfo.InvariantCulture, DateTimeStyles.None, out var date))
        {
            return date;
        }

        doubts.Add($"The file gives '{text}' as its date, which cannot be; it is not used.");
        return null;
    }

    private static PixelDimensions? ReadPixels(MetadataExtractor.Directory? directory) =>
        directory is not null
        && directory.TryGetInt32(ExifDirectoryBase.TagExifImageWidth, out var wide)
        && directory.TryGetInt32(ExifDirectoryBase.TagExifImageHeight, out var high)
        && wide > 0 && high > 0
            ? new PixelDimensions(wide, high)
            : null;

    private static TimeSpan? ReadOffset(MetadataExtractor.Directory? directory)
    {
        var text = Text(directory, OffsetTimeOriginal);
        text = text.Length > 0 ? text : Text(directory, OffsetTime);
        var positive = text.StartsWith('+');
        var sound = TimeSpan.TryParseExact(
            text.TrimStart('+', '-'), @"hh\:mm", CultureInfo.InvariantCulture, out var offset) && offset <= TimeSpan.FromHours(14);

        return !sound ? null : positive ? offset : -offset;
    }

    private static PictureOrientation ReadOrientation(MetadataExtractor.Directory? directory, List<string> doubts)
    {
        if (directory is null || !directory.ContainsTag(ExifDirectoryBase.TagOrientation))
        {
            return PictureOrientation.Upright;
        }

        if (directory.TryGetInt32(ExifDirectoryBase.TagOrientation, out var value) && value is >= 1 and <= 8)
        {
            return (PictureOrientation)value;
        }

        doubts.Add("The file's orientation is none of the eight there are; the picture is taken as upright.");
        return PictureOrientation.Upright;
    }

    private static string CameraName(MetadataExtractor.Directory? directory)
    {
        var make = Text(directory, ExifDirectoryBase.TagMake);
        var model = Text(directory, ExifDirectoryBase.TagModel);

        return model.StartsWith(make, StringComparison.OrdinalIgnoreCase) ? model : $"{make} {model}".Trim();
    }

    private static string Text(MetadataExtractor.Directory? directory, int tag) =>
        directory?.GetString(tag)?.Trim('\0', ' ') ?? "";
}
