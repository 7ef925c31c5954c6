namespace StudioKit.Sheets.Drawings;

/// <summary>Straight lines from point to point, left open.</summary>
/// <param name="Points">The points in order, at least two [mm].</param>
/// <param name="Stroke">How it is drawn.</param>
public sealed record Polyline(IReadOnlyList<Point> Points, Stroke Stroke) : Primitive
{
    /// <inheritdoc/>
    public override Bounds Bounds => Bounds.Of(Points);

    /// <inheritdoc/>
    public override Primitive Under(Similarity change) => this with { Points = change.Apply(Points) };
}
