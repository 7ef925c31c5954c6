using StudioKit.Planning.Studio.Hardware;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building.Hardware;

/// <summary>Small pictures of what has no outline of its own to be held against: bags, cloths, tape, bands, glue. They show what it is, and not its size.</summary>
internal static class SoftOutline
{
    private const double Wide = 14;
    private const double High = 10;

    /// <summary>The picture, none larger than the others.</summary>
    public static IReadOnlyList<Primitive> Of(HardwareKind kind) => kind switch
    {
        HardwareKind.BallastBag => Bag(),
        HardwareKind.PanelCloth or HardwareKind.WipingCloth => Cloth(),
        HardwareKind.FlapTape => Roll(),
        HardwareKind.HeadBand => Ring(),
        HardwareKind.NutGlue => Tube(),
        HardwareKind.CordRag => Rag(),
        HardwareKind.LowStand => Stand(),
        _ => Coil(),
    };

    // A sack, tied under its mouth.
    private static IReadOnlyList<Primitive> Bag() =>
    [
        new Polyline([new(5, 0), new(6, 2.5), new(3, 5), new(2.5, 8.5), new(4, High), new(10, High), new(11.5, 8.5), new(11, 5), new(8, 2.5), new(9, 0), new(5, 0)], Stroke.Edge),
        new Line(new Point(5.6, 2.5), new Point(8.4, 2.5), Stroke.Heavy),
    ];

    // One corner turned over.
    private static IReadOnlyList<Primitive> Cloth() =>
    [
        new Polyline([new(0, 0), new(10, 0), new(Wide, 4), new(Wide, High), new(0, High), new(0, 0)], Stroke.Edge),
        new Polyline([new(10, 0), new(10, 4), new(Wide, 4)], Stroke.Thin),
    ];

    private static IReadOnlyList<Primitive> Roll() =>
    [
        new Circle(new Point(5, 5), 5, Stroke.Edge),
        new Circle(new Point(5, 5), 2.5, Stroke.Edge),
        new Line(new Point(5, High), new Point(Wide, High), Stroke.Edge),
    ];

    private static IReadOnlyList<Primitive> Ring() => [new Circle(new Point(5, 5), 5, Stroke.Edge), new Circle(new Point(5, 5), 4, Stroke.Edge)];

    private static IReadOnlyList<Primitive> Tube() =>
    [
        new Polyline([new(0, 1), new(0, 9), new(10, 7.5), new(10, 2.5), new(0, 1)], Stroke.Edge),
        Polygon.Rectangle(new Bounds(10, 3.5, Wide, 6.5), Stroke.Edge, Fill.LightGrey),
    ];

    // Knotted round its cord.
    private static IReadOnlyList<Primitive> Rag() =>
    [
        new Line(new Point(0, 2), new Point(Wide, 2), Stroke.Thin),
        new Polyline([new(7, 2), new(4, High), new(6.5, 8.5), new(7.5, High), new(9, 8), new(7, 2)], Stroke.Edge),
    ];

    private static IReadOnlyList<Primitive> Stand() =>
    [
        Polygon.Rectangle(new Bounds(4, 0, 10, 2), Stroke.Edge, Fill.LightGrey),
        .. new[] { 1.0, 7, 13 }.Select(foot => new Line(new Point(7, 2), new Point(foot, High), Stroke.Edge)),
    ];

    private static IReadOnlyList<Primitive> Coil() => [.. new[] { 5.0, 4, 3 }.Select(radius => new Circle(new Point(5, 5), radius, Stroke.Thin)), new Line(new Point(5, High), new Point(Wide, High), Stroke.Thin)];
}
