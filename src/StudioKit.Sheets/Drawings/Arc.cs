namespace StudioKit.Sheets.Drawings;

/// <summary>Part of a circle.</summary>
/// <param name="Centre">Centre of the circle [mm].</param>
/// <param name="Radius">Its radius [mm]; &gt; 0.</param>
/// <param name="Start">Where the arc begins, clockwise from the direction of x [rad].</param>
/// <param name="Sweep">How far it runs, clockwise where positive [rad]; within one full turn.</param>
/// <param name="Stroke">How it is drawn.</param>
public sealed record Arc(Point Centre, double Radius, double Start, double Sweep, Stroke Stroke) : Primitive
{
    /// <inheritdoc/>
    public override Bounds Bounds => Bounds.Of(Extremes());

    /// <inheritdoc/>
    public override Primitive Under(Similarity change) => this with
    {
        Centre = change.Apply(Centre),
        Radius = Radius * change.Scale,
        Start = Start + change.Turn,
    };

    internal Point At(double angle) => Centre.Plus(Radius * Math.Cos(angle), Radius * Math.Sin(angle));

    // The ends, and every quarter turn between them: a circle reaches furthest there.
    private IEnumerable<Point> Extremes()
    {
        yield return At(Start);
        yield return At(Start + Sweep);
        var (low, high) = Sweep < 0 ? (Start + Sweep, Start) : (Start, Start + Sweep);
        for (var quarter = Math.Ceiling(low / (Math.PI / 2)); quarter * Math.PI / 2 < high; quarter++)
        {
            yield return At(quarter * Math.PI / 2);
        }
    }
}
