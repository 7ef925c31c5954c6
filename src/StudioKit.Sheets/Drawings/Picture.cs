namespace StudioKit.Sheets.Drawings;

/// <summary>A photograph.</summary>
/// <param name="Place">Where it is printed, upright [mm].</param>
/// <param name="Jpeg">A JPEG file, its rows as they are seen.</param>
/// <param name="Description">What it shows, for someone who cannot see it.</param>
public sealed record Picture(Bounds Place, ReadOnlyMemory<byte> Jpeg, string Description) : Primitive
{
    /// <inheritdoc/>
    public override Bounds Bounds => Place;

    /// <inheritdoc/>
    /// <exception cref="InvalidOperationException">The change turns the picture, which stands upright.</exception>
    public override Primitive Under(Similarity change) => change.Turn == 0
        ? this with { Place = Bounds.Of([change.Apply(new Point(Place.Left, Place.Top)), change.Apply(new Point(Place.Right, Place.Bottom))]) }
        : throw new InvalidOperationException("A picture stands upright.");
}
