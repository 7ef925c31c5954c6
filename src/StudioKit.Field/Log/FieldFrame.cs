using StudioKit.Field.Pictures;

namespace StudioKit.Field.Log;

/// <summary>One picture of a subject.</summary>
public sealed record FieldFrame
{
    /// <summary>Subject it shows.</summary>
    public required string SubjectId { get; init; }

    /// <summary>File name, without folder; unique for the subject.</summary>
    public required string FileName { get; init; }

    /// <summary>Identifier: the subject's and the file name.</summary>
    public string Id => $"{SubjectId}:{FileName}";

    /// <summary>When it was taken: a moment, or a day where no more is known.</summary>
    public FieldDate? Taken { get; init; }

    /// <summary>Exposure time [s].</summary>
    public double? ExposureTime { get; init; }

    /// <summary>f-number [1].</summary>
    public double? FNumber { get; init; }

    /// <summary>ISO speed [1].</summary>
    public double? Iso { get; init; }

    /// <summary>Focal length [mm].</summary>
    public double? FocalLength { get; init; }

    /// <summary>Size of a pixel at the subject [µm].</summary>
    public double? MicrometresPerPixel { get; init; }

    /// <summary>Lens as its file names it; empty where it does not.</summary>
    public string Lens { get; init; } = "";

    /// <summary>Framing of the kit that it was taken in, by its name in the plan; empty where it is not known.</summary>
    public string Framing { get; init; } = "";

    /// <summary>Set-up of the kit that it was taken in; empty where it is not known.</summary>
    public string SetUp { get; init; } = "";

    /// <summary>Caption.</summary>
    public string Caption { get; init; } = "";

    /// <summary>Photographer.</summary>
    public string Creator { get; init; } = "";

    /// <summary>Licence, best as an address.</summary>
    public string Licence { get; init; } = "";

    /// <summary>This frame after its file was read again: what the file says now counts, and everything else stays.</summary>
    /// <param name="read">What was read.</param>
    public FieldFrame ReadAgain(FieldFrame read)
    {
        ArgumentNullException.ThrowIfNull(read);
        return this with
        {
            Taken = read.Taken ?? Taken,
            ExposureTime = read.ExposureTime ?? ExposureTime,
            FNumber = read.FNumber ?? FNumber,
            Iso = read.Iso ?? Iso,
            FocalLength = read.FocalLength ?? FocalLength,
            MicrometresPerPixel = read.MicrometresPerPixel ?? MicrometresPerPixel,
            Lens = Or(read.Lens, Lens),
            Framing = Or(read.Framing, Framing),
            SetUp = Or(read.SetUp, SetUp),
        };
    }

    /// <summary>A frame with the settings that its file gives.</summary>
    /// <param name="subjectId">Subject it shows.</param>
    /// <param name="path">Picture file.</param>
    /// <param name="settings">Settings read from it.</param>
    /// <param name="clockOffset">How far the camera's clock is ahead of universal time, where the file does not say.</param>
    public static FieldFrame From(string subjectId, string path, FrameSettings settings, TimeSpan clockOffset)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return new FieldFrame
        {
            SubjectId = subjectId,
            FileName = Path.GetFileName(path),
            Taken = settings.Taken ?? (settings.TakenLocal is { } local ? new DateTimeOffset(local, clockOffset) : (FieldDate?)null),
            ExposureTime = settings.Shutter?.Seconds,
            FNumber = settings.Aperture?.Value,
            Iso = settings.Iso?.Value,
            FocalLength = settings.FocalLength?.Millimeters,
            Lens = settings.Lens,
        };
    }

    private static string Or(string read, string known) => read.Length > 0 ? read : known;
}
