using StudioKit.Planning;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Documents;

/// <summary>The panel in plan view with its size to cut and the part of it that the framings need.</summary>
internal static class PanelDrawing
{
    public static Drawing Of(PanelPlan panel)
    {
        var (width, depth) = (panel.Width.Millimeters, panel.Depth.Millimeters);
        var (needWidth, needDepth) = (panel.RequiredWidth.Millimeters, panel.RequiredDepth.Millimeters);
        var need = new Bounds((width - needWidth) / 2, (depth - needDepth) / 2, (width + needWidth) / 2, (depth + needDepth) / 2);
        return new Drawing(
            "Panel from above",
            $"{PlanFormat.Rectangle(panel.Width, panel.Depth)} of {panel.Material}; the framings need {PlanFormat.Rectangle(panel.RequiredWidth, panel.RequiredDepth)}",
            [
                Polygon.Rectangle(new Bounds(0, 0, width, depth), Stroke.Heavy),
                Polygon.Rectangle(need, Stroke.Hidden),
                new Label(new Point(width / 2, depth / 2), "needed", 8, TextAnchor.Middle),
                Dimension.InMillimetres(new Point(0, depth), new Point(width, depth), 8),
                Dimension.InMillimetres(new Point(0, 0), new Point(0, depth), 8),
            ]);
    }
}
