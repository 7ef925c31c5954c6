namespace StudioKit.Field.Pictures;

/// <summary>How the stored rows lie in the picture as seen; the numbers are those of the Exif tag.</summary>
public enum PictureOrientation
{
    /// <summary>First row on top, first column left.</summary>
    Upright = 1,

    /// <summary>Mirrored left to right.</summary>
    MirroredUpright = 2,

    /// <summary>Turned half a turn.</summary>
    UpsideDown = 3,

    /// <summary>Mirrored top to bottom.</summary>
    MirroredUpsideDown = 4,

    /// <summary>First row left, first column on top.</summary>
    MirroredOnLeft = 5,

    /// <summary>First row right, first column on top: turn a quarter clockwise to see it.</summary>
    TurnClockwise = 6,

    /// <summary>First row right, first column at the bottom.</summary>
    MirroredOnRight = 7,

    /// <summary>First row left, first column at the bottom: turn a quarter anticlockwise to see it.</summary>
    TurnAnticlockwise = 8,
}
