namespace StudioKit.Sheets.Drawings;

/// <summary>A closed shape of straight sides; where sides cross, the even-odd rule says what is inside.</summary>
/// <param name="Points">The corners in order, at least three [mm].</param>
/// <param name="Stroke">How its outline is drawn; no outline where there is none.</param>
/// <param name="Fill">What fills it.</param>
public sealed record Polygon(IReadOnlyList<Point> Points, Stroke? Stroke, Fill Fill = Fill.None) : Primitive
{
    /// <inheritdoc/>
    public override Bounds Bounds => Bounds.Of(Points);

    /// <summary>An upright rectangle.</summary>
    /// <param name="bounds">Its edges [mm].</param>
    /// <param name="stroke">How its outline is drawn.</param>
    /// <param name="fill">What fills it.</param>
    /// <returns>The rectangle.</returns>
    public static Polygon Rectangle(Bounds bounds, Stroke? stroke, Fill fill = Fill.None) => new(
        [
            new(bounds.Left, bounds.Top), new(bounds.Right, bounds.Top),
            new(bounds.Right, bounds.Bottom), new(bounds.Left, bounds.Bottom),
        ],
        stroke,
        fill);

    /// <inheritdoc/>
    public override Primitive Under(Similarity change) => this with { Points = change.Apply(Points) };
}
