using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Layout;

namespace StudioKit.Sheets.Cards;

/// <summary>Black, grey and white squares of 10 mm beside each other: a scale in the picture, and a grey to judge the exposure by.</summary>
internal sealed record ScalePatches : Block
{
    /// <summary>Side of a square [mm].</summary>
    public const double Side = 10;

    public const double Width = 3 * Side;

    private static readonly (string Name, Fill Fill)[] Patches = [("black", Fill.Black), ("grey", Fill.Grey), ("white", Fill.White)];

    public override double? Breadth => Width;

    public override Fit Fit(double width, double height)
    {
        var line = TypeScale.LineHeight(TypeScale.Smallest);
        return Layout.Fit.WholeOrNothing(this, "The patches", Side + (2 * line) + 0.4, height, () =>
        [.. new Drawing("Scale patches", "A black, a grey and a white square of 10 mm beside each other",
        [
            .. Patches.SelectMany((patch, i) => new Primitive[]
            {
                Polygon.Rectangle(new Bounds(i * Side, 0, (i + 1) * Side, Side), null, patch.Fill),
                new Label(new Point((i + 0.5) * Side, Side + 0.4 + TypeScale.Baseline(TypeScale.Smallest)), patch.Name, TypeScale.Smallest, TextAnchor.Middle),
            }),
            Polygon.Rectangle(new Bounds(0, 0, Width, Side), Stroke.Thin),
            new Label(new Point(0, Side + 0.4 + line + TypeScale.Baseline(TypeScale.Smallest)), "10 mm each, as printed", TypeScale.Smallest),
        ]).AsFigure()]);
    }
}
