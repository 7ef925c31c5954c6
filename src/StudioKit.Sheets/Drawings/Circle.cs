namespace StudioKit.Sheets.Drawings;

/// <summary>A full circle.</summary>
/// <param name="Centre">Its centre [mm].</param>
/// <param name="Radius">Its radius [mm]; &gt; 0.</param>
/// <param name="Stroke">How its outline is drawn; no outline where there is none.</param>
/// <param name="Fill">What fills it.</param>
public sealed record Circle(Point Centre, double Radius, Stroke? Stroke, Fill Fill = Fill.None) : Primitive
{
    /// <inheritdoc/>
    public override Bounds Bounds =>
        new(Centre.X - Radius, Centre.Y - Radius, Centre.X + Radius, Centre.Y + Radius);

    /// <inheritdoc/>
    public override Primitive Under(Similarity change) =>
        this with { Centre = change.Apply(Centre), Radius = Radius * change.Scale };
}
