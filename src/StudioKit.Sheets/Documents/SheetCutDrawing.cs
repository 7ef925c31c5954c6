using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Documents;

/// <summary>One stock sheet with the pieces cut from it, at full size; what is left over is hatched.</summary>
internal static class SheetCutDrawing
{
    public static Drawing Of(CutSheet sheet)
    {
        var (width, height) = (sheet.StockWidth.Millimeters, sheet.StockHeight.Millimeters);
        return new Drawing(
            FormattableString.Invariant($"Sheet {sheet.Number}: {sheet.StockLabel}"),
            $"{sheet.Panels.Count} pieces on a sheet of {PlanFormat.Rectangle(sheet.StockWidth, sheet.StockHeight)}",
            [
                .. sheet.Remainders.Select(rest => Box(height, rest.X.Millimeters, rest.Y.Millimeters, rest.Width.Millimeters, rest.Height.Millimeters, Fill.Hatch)),
                .. sheet.Panels.SelectMany(panel => Piece(panel, height)),
                Polygon.Rectangle(new Bounds(0, 0, width, height), Stroke.Edge),
                Dimension.InMillimetres(new Point(0, height), new Point(width, height), 8),
                Dimension.InMillimetres(new Point(0, 0), new Point(0, height), 8),
            ]);
    }

    // The plan counts heights from the sheet's lower edge, a drawing from its upper.
    private static Polygon Box(double sheet, double x, double y, double width, double height, Fill fill) =>
        Polygon.Rectangle(new Bounds(x, sheet - y - height, x + width, sheet - y), Stroke.Edge, fill);

    private static IEnumerable<Primitive> Piece(PlacedPanel panel, double sheet)
    {
        var box = Box(sheet, panel.X.Millimeters, panel.Y.Millimeters, panel.Width.Millimeters, panel.Height.Millimeters, Fill.White);
        yield return box;
        var middle = new Point((box.Bounds.Left + box.Bounds.Right) / 2, (box.Bounds.Top + box.Bounds.Bottom) / 2);
        yield return new Label(middle, panel.Label, 8, TextAnchor.Middle, Weight: TextWeight.Bold);
        yield return new Label(middle, PlanFormat.Rectangle(panel.Width, panel.Height), 8, TextAnchor.Middle, TextRise.Below);
    }
}
