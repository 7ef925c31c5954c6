namespace StudioKit.Field.Pictures;

/// <summary>A picture as it is seen, given how its rows are stored: its size, and where each of its places is kept.</summary>
/// <param name="Orientation">How the stored rows lie (CIPA DC-008, tag 274).</param>
/// <param name="StoredWidth">Pixels in a stored row [1].</param>
/// <param name="StoredHeight">Stored rows [1].</param>
public readonly record struct SeenPicture(PictureOrientation Orientation, int StoredWidth, int StoredHeight)
{
    /// <summary>Pixels across, as seen [1].</summary>
    public int Width => IsTurned ? StoredHeight : StoredWidth;

    /// <summary>Pixels down, as seen [1].</summary>
    public int Height => IsTurned ? StoredWidth : StoredHeight;

    private bool IsTurned => Orientation >= PictureOrientation.MirroredOnLeft;

    /// <summary>Where a place of the picture as seen is stored, both from the top left corner.</summary>
    /// <param name="x">Place to the right, as seen, in pixels [1].</param>
    /// <param name="y">Place down, as seen, in pixels [1].</param>
    /// <returns>Place along the stored row and down the stored rows, in pixels [1].</returns>
    public (double X, double Y) Stored(double x, double y) => Orientation switch
    {
        PictureOrientation.MirroredUpright => (StoredWidth - x, y),
        PictureOrientation.UpsideDown => (StoredWidth - x, StoredHeight - y),
        PictureOrientation.MirroredUpsideDown => (x, StoredHeight - y),
        PictureOrientation.MirroredOnLeft => (y, x),
        PictureOrientation.TurnClockwise => (y, StoredHeight - x),
        PictureOrientation.MirroredOnRight => (StoredWidth - y, StoredHeight - x),
        PictureOrientation.TurnAnticlockwise => (StoredWidth - y, x),
        _ => (x, y),
    };
}
