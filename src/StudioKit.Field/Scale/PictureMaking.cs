using StudioKit.Field.Pictures;

namespace StudioKit.Field.Scale;

/// <summary>How a picture file came from what the camera recorded.</summary>
public sealed record PictureMaking
{
    /// <summary>Whether it is a part of the whole picture: a crop leaves the pixels as they are.</summary>
    public bool IsCropped { get; init; }

    /// <summary>Pixels it had, after any crop, before it was made smaller or larger; none where its pixels are the camera's own.</summary>
    public PixelDimensions? ResizedFrom { get; init; }
}
