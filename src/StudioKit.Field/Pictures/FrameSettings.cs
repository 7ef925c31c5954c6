using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using UnitsNet;

namespace StudioKit.Field.Pictures;

/// <summary>What a picture file says of how it was taken. Anything missing or impossible is none.</summary>
public sealed record FrameSettings
{
    /// <summary>Shutter speed.</summary>
    public ShutterSpeed? Shutter { get; init; }

    /// <summary>f-number as the camera wrote it.</summary>
    public FNumber? Aperture { get; init; }

    /// <summary>ISO speed.</summary>
    public IsoSpeed? Iso { get; init; }

    /// <summary>f-number as exact as the dial, where it is a mark on it.</summary>
    public FNumber? MarkedAperture => Aperture is { } written ? ThirdStopSeries.FromMark(written) : null;

    /// <summary>ISO speed as exact as the dial, where it is a mark on it.</summary>
    public IsoSpeed? MarkedIso => Iso is { } written ? ThirdStopSeries.FromMark(written) : null;

    /// <summary>Focal length set on the lens.</summary>
    public Length? FocalLength { get; init; }

    /// <summary>Date and time on the camera's clock, which has no place on the globe by itself.</summary>
    public DateTime? TakenLocal { get; init; }

    /// <summary>How far the camera's clock is ahead of universal time, where the file says so.</summary>
    public TimeSpan? ClockOffset { get; init; }

    /// <summary>Moment of exposure; none where the file does not give the clock's offset.</summary>
    public DateTimeOffset? Taken =>
        TakenLocal is { } local && ClockOffset is { } offset ? new DateTimeOffset(local, offset) : null;

    /// <summary>Pixels that the camera recorded, as the file says it; a picture with others was cropped, resized or is a preview.</summary>
    public PixelDimensions? RecordedPixels { get; init; }

    /// <summary>Whether the pixels are those of a smaller picture kept inside a raw file.</summary>
    public bool IsPreview { get; init; }

    /// <summary>How the stored rows lie.</summary>
    public PictureOrientation Orientation { get; init; } = PictureOrientation.Upright;

    /// <summary>Camera as named in the file; empty where it is not.</summary>
    public string Camera { get; init; } = "";

    /// <summary>Lens as named in the file; empty where it is not.</summary>
    public string Lens { get; init; } = "";

    /// <summary>Description of the picture, as somebody wrote it into the file; empty where nobody did.</summary>
    public string Description { get; init; } = "";

    /// <summary>What the file says that cannot be true, one sentence each.</summary>
    public IReadOnlyList<string> Doubts { get; init; } = [];
}
