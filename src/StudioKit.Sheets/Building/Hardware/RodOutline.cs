using StudioKit.Planning;
using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Hardware;

/// <summary>Round things: a section at full size, and the length shortened by a break where it is long.</summary>
internal static class RodOutline
{
    private const double Shown = 60;
    private const double Left = 16;
    private const double LabelPt = 8;

    /// <summary>A peg with its hook and point.</summary>
    public static IReadOnlyList<Primitive> Peg(HardwareLine line)
    {
        var radius = line.Diameter!.Value.Millimeters / 2;
        return
        [
            .. Broken(line, radius),
            new Polyline([new Point(Left, -radius), new Point(Left - 2, -radius - 12), new Point(Left + 12, -radius - 12), new Point(Left + 12, -radius - 6)], Stroke.Heavy),
            new Polyline([new Point(Left + Shown, -radius), new Point(Left + Shown + 12, 0), new Point(Left + Shown, radius)], Stroke.Edge),
        ];
    }

    /// <summary>A stake that fills a pole.</summary>
    public static IReadOnlyList<Primitive> Stake(HardwareLine line)
    {
        var radius = line.Diameter!.Value.Millimeters / 2;
        return [.. Section(radius), .. Broken(line, radius), new Polyline([new Point(Left + Shown, -radius), new Point(Left + Shown + 14, 0), new Point(Left + Shown, radius)], Stroke.Edge)];
    }

    /// <summary>A short screw.</summary>
    public static IReadOnlyList<Primitive> Screw(HardwareLine line)
    {
        var (radius, length) = (line.Diameter!.Value.Millimeters / 2, line.Length!.Value.Millimeters);
        return
        [
            Polygon.Rectangle(new Bounds(-2, -2 * radius, 0, 2 * radius), Stroke.Edge, Fill.LightGrey),
            new Polyline([new Point(0, -radius), new Point(length - 3, -radius), new Point(length, 0), new Point(length - 3, radius), new Point(0, radius)], Stroke.Edge),
            new Label(new Point(length + 3, 0), $"hole: drill {PlanFormat.AsSold(line.Hole!.Value)}", LabelPt, Rise: TextRise.Middle),
        ];
    }

    /// <summary>The end of a cord.</summary>
    public static IReadOnlyList<Primitive> Cord(HardwareLine line)
    {
        var radius = line.Diameter!.Value.Millimeters / 2;
        return
        [
            new Circle(new Point(0, 0), radius, Stroke.Edge, Fill.Grey),
            new Line(new Point(Left, -radius), new Point(Left + Shown, -radius), Stroke.Edge),
            new Line(new Point(Left, radius), new Point(Left + Shown, radius), Stroke.Edge),
            .. Enumerable.Range(1, 14).Select(Primitive (i) => new Line(new Point(Left + (i * 4), -radius), new Point(Left + (i * 4) + radius, radius), Stroke.Thin)),
        ];
    }

    /// <summary>The stub of pipe that a ball joint sits on, from its end.</summary>
    public static IReadOnlyList<Primitive> Stub(HardwareLine line)
    {
        var radius = line.Diameter!.Value.Millimeters / 2;
        return [.. Section(radius), new Label(new Point(radius + 4, 0), $"stub, {PlanFormat.AsSold(line.Diameter.Value)} outside", LabelPt, Rise: TextRise.Middle)];
    }

    /// <summary>Two wavy lines, with nothing between them, across something round: it is longer than it is drawn.</summary>
    public static IEnumerable<Primitive> Break(double radius, double at, bool upright)
    {
        var reach = radius + 2;
        foreach (var shift in new[] { 0.0, 3 })
        {
            Point[] points = [new(at + shift - 1, -reach), new(at + shift + 1, -reach / 3), new(at + shift - 1, reach / 3), new(at + shift + 1, reach)];
            yield return new Polyline([.. points.Select(point => upright ? new Point(point.Y, point.X) : point)], Stroke.Edge);
        }
    }

    private static IEnumerable<Primitive> Broken(HardwareLine line, double radius) =>
    [
        Polygon.Rectangle(new Bounds(Left, -radius, Left + Shown, radius), Stroke.Edge, Fill.White),
        .. Break(radius, Left + (Shown / 2), upright: false),
        new Label(new Point(Left + (Shown / 2), radius + 6), $"{PlanFormat.WholeMillimetres(line.Length!.Value)} long", LabelPt, TextAnchor.Middle),
    ];

    private static IEnumerable<Primitive> Section(double radius) =>
    [
        new Circle(new Point(0, 0), radius, Stroke.Edge, Fill.Hatch),
        new Line(new Point(-radius - 2, 0), new Point(radius + 2, 0), Stroke.Centre),
        new Line(new Point(0, -radius - 2), new Point(0, radius + 2), Stroke.Centre),
    ];
}
