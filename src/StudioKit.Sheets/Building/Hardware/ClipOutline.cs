using StudioKit.Planning;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Hardware;

/// <summary>A clip round what it grips.</summary>
internal static class ClipOutline
{
    private const double PadWidth = 10;
    private const double Reach = 8;

    /// <summary>Round a pipe and what lies on it.</summary>
    public static IReadOnlyList<Primitive> Of(HardwareLine line)
    {
        var radius = line.Diameter!.Value.Millimeters / 2;
        var layers = line.Grips.Skip(1).Select(grip => grip.Millimeters).ToList();
        var top = -radius - layers.Sum();
        List<Primitive> marks = [new Circle(new Point(0, 0), radius, Stroke.Thin, Fill.LightGrey)];
        var y = -radius;
        for (var i = 0; i < layers.Count; i++)
        {
            var half = i == layers.Count - 1 ? radius + Reach : PadWidth / 2;
            marks.Add(Polygon.Rectangle(new Bounds(-Math.Min(half, radius), y - layers[i], half, y), Stroke.Thin, i == layers.Count - 1 ? Fill.White : Fill.Grey));
            y -= layers[i];
        }

        marks.Add(Jaws(radius, top, radius));
        marks.Add(new Dimension(new Point(radius + Reach, top), new Point(radius + Reach, radius), -6, PlanFormat.AsSold(HardwareText.Opening(line))));
        return marks;
    }

    /// <summary>Round two pipes that cross.</summary>
    public static IReadOnlyList<Primitive> Crossed(HardwareLine line)
    {
        var radius = line.Diameter!.Value.Millimeters / 2;
        return
        [
            new Circle(new Point(0, 0), radius, Stroke.Thin, Fill.LightGrey),
            Polygon.Rectangle(new Bounds(-radius - Reach, -3 * radius, radius + Reach, -radius), Stroke.Thin, Fill.White),
            Jaws(radius, -3 * radius, radius),
            new Dimension(new Point(radius + Reach, -3 * radius), new Point(radius + Reach, radius), -6, PlanFormat.AsSold(HardwareText.Opening(line))),
        ];
    }

    // Open to the right.
    private static Polyline Jaws(double radius, double top, double bottom) => new(
        [
            new Point(radius * 0.7, top), new Point(-radius * 0.5, top), new Point(-radius - 2, top + 2), new Point(-radius - 2, bottom - 2),
            new Point(-radius * 0.5, bottom), new Point(radius * 0.5, bottom), new Point((radius * 0.5) + 3, bottom - 2),
        ],
        Stroke.Heavy);
}
