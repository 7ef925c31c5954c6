namespace StudioKit.Sheets.Drawings;

/// <summary>A straight line.</summary>
/// <param name="From">One end [mm].</param>
/// <param name="To">The other end [mm].</param>
/// <param name="Stroke">How it is drawn.</param>
public sealed record Line(Point From, Point To, Stroke Stroke) : Primitive
{
    /// <inheritdoc/>
    public override Bounds Bounds => Bounds.Of([From, To]);

    /// <inheritdoc/>
    public override Primitive Under(Similarity change) =>
        this with { From = change.Apply(From), To = change.Apply(To) };
}
