using StudioKit.Planning;
using UnitsNet;

namespace StudioKit.Sheets.Drawings;

/// <summary>A measure with extension lines and arrows; scaling the drawing leaves its text alone.</summary>
/// <param name="From">First measured point [mm].</param>
/// <param name="To">Second measured point [mm].</param>
/// <param name="Offset">Distance on paper of the dimension line from the points, to the right of the way from first to second where positive [mm].</param>
/// <param name="Text">The measure with its unit.</param>
/// <param name="SizePt">Font size of the text [pt]; &gt; 0.</param>
public sealed record Dimension(Point From, Point To, double Offset, string Text, double SizePt = 8) : Primitive
{
    /// <inheritdoc/>
    public override Bounds Bounds => Marks().Select(mark => mark.Bounds).Aggregate((a, b) => a.With(b));

    /// <summary>A measure whose text is the drawn distance in whole or tenths of millimetres.</summary>
    /// <param name="from">First measured point [mm].</param>
    /// <param name="to">Second measured point [mm].</param>
    /// <param name="offset">Distance on paper of the dimension line from the points [mm].</param>
    /// <returns>The dimension.</returns>
    public static Dimension InMillimetres(Point from, Point to, double offset) =>
        new(from, to, offset, CutFormat.CutLength(Length.FromMillimeters(from.DistanceTo(to))));

    /// <inheritdoc/>
    public override Primitive Under(Similarity change) =>
        this with { From = change.Apply(From), To = change.Apply(To) };

    /// <summary>The plain marks that it is made of.</summary>
    internal IReadOnlyList<Primitive> Marks() => DimensionMarks.Of(this);
}
