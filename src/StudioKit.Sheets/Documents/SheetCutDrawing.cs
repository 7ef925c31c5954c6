using StudioKit.Planning;
using StudioKit.Planning.Cutting;
using StudioKit.Sheets.Drawings;
using StudioKit.Sheets.Fonts;

namespace StudioKit.Sheets.Documents;

/// <summary>One stock sheet with the pieces cut from it, at full size; what is left over is hatched.</summary>
internal static class SheetCutDrawing
{
    private const double TextPt = 8;

    // What a drawing of one piece, of which two stand beside each other, and one of several have of the page without their measures [mm].
    private const double HalfWide = 70;
    private const double Wide = 150;
    private const double Tall = 80;
    private const double FromEdge = 1;

    public static Drawing Of(CutSheet sheet)
    {
        var (width, height) = (sheet.StockWidth.Millimeters, sheet.StockHeight.Millimeters);
        return new Drawing(
            FormattableString.Invariant($"Sheet {sheet.Number}: {sheet.StockName}{Legend(sheet)}"),
            $"{sheet.Panels.Count} pieces on a sheet of {PlanFormat.Rectangle(sheet.StockWidth, sheet.StockHeight)}",
            [
                .. sheet.Remainders.Select(rest => Box(height, rest.X.Millimeters, rest.Y.Millimeters, rest.Width.Millimeters, rest.Height.Millimeters, Fill.Hatch)),
                .. sheet.Panels.SelectMany((panel, i) => Piece(panel, height, IsSmall(sheet, panel) ? i + 1 : null)),
                Polygon.Rectangle(new Bounds(0, 0, width, height), Stroke.Edge),
                new Dimension(new Point(0, height), new Point(width, height), 8, PlanFormat.WholeMillimetres(sheet.StockWidth)),
                new Dimension(new Point(0, 0), new Point(0, height), 8, PlanFormat.WholeMillimetres(sheet.StockHeight)),
            ]);
    }

    // A piece too small for its name has a number, which the title explains.
    private static string Legend(CutSheet sheet) => string.Concat(sheet.Panels.Select((panel, i) => IsSmall(sheet, panel)
        ? FormattableString.Invariant($"; {i + 1}: {panel.Label} {PlanFormat.Rectangle(panel.Width, panel.Height)}")
        : ""));

    private static bool IsSmall(CutSheet sheet, PlacedPanel panel)
    {
        var reduction = PaperScale.Of(sheet.StockWidth.Millimeters, sheet.StockHeight.Millimeters, sheet.Panels.Count == 1 ? HalfWide : Wide, Tall);
        var text = Math.Max(TextMeter.Width(panel.Label, TextPt, TextWeight.Bold), TextMeter.Width(PlanFormat.Rectangle(panel.Width, panel.Height), TextPt, TextWeight.Regular));
        return text > (panel.Width.Millimeters / reduction) - (2 * FromEdge);
    }

    // The plan counts heights from the sheet's lower edge, a drawing from its upper.
    private static Polygon Box(double sheet, double x, double y, double width, double height, Fill fill) =>
        Polygon.Rectangle(new Bounds(x, sheet - y - height, x + width, sheet - y), Stroke.Edge, fill);

    private static IEnumerable<Primitive> Piece(PlacedPanel panel, double sheet, int? number)
    {
        var box = Box(sheet, panel.X.Millimeters, panel.Y.Millimeters, panel.Width.Millimeters, panel.Height.Millimeters, Fill.White);
        yield return box;
        var middle = new Point((box.Bounds.Left + box.Bounds.Right) / 2, (box.Bounds.Top + box.Bounds.Bottom) / 2);
        if (number is { } key)
        {
            yield return new Label(middle, key.ToString(System.Globalization.CultureInfo.InvariantCulture), TextPt, TextAnchor.Middle, TextRise.Middle, Weight: TextWeight.Bold);
            yield break;
        }

        yield return new Label(middle, panel.Label, TextPt, TextAnchor.Middle, Weight: TextWeight.Bold);
        yield return new Label(middle, PlanFormat.Rectangle(panel.Width, panel.Height), TextPt, TextAnchor.Middle, TextRise.Below);
    }
}
