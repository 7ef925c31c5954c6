using StudioKit.Planning;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Hardware;

/// <summary>A pin with its ring, and the hole that it goes into.</summary>
internal static class PinOutline
{
    private const double Ring = 6;
    private const double LabelPt = 8;

    public static IReadOnlyList<Primitive> Of(HardwareLine line)
    {
        var (length, radius, hole) = (line.Length!.Value.Millimeters, line.Diameter!.Value.Millimeters / 2, line.Hole!.Value.Millimeters / 2);
        var under = (2 * radius) + 20;
        return
        [
            new Circle(new Point(-Ring, 0), Ring, Stroke.Edge),
            Polygon.Rectangle(new Bounds(0, -radius, length - radius, radius), Stroke.Edge, Fill.LightGrey),
            new Arc(new Point(length - radius, 0), radius, -Math.PI / 2, Math.PI, Stroke.Edge),
            new Dimension(new Point(0, radius), new Point(length, radius), 5, PlanFormat.WholeMillimetres(line.Length.Value)),
            new Circle(new Point(0, under), hole, Stroke.Edge),
            new Line(new Point(-hole - 2, under), new Point(hole + 2, under), Stroke.Centre),
            new Line(new Point(0, under - hole - 2), new Point(0, under + hole + 2), Stroke.Centre),
            new Label(new Point(hole + 4, under), $"hole: drill {PlanFormat.AsSold(line.Hole.Value)}", LabelPt, Rise: TextRise.Middle),
        ];
    }
}
