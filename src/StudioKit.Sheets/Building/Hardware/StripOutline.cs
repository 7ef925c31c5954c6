using StudioKit.Planning;
using StudioKit.Sheets.Drawings;
using UnitsNet;

namespace StudioKit.Sheets.Building.Hardware;

/// <summary>Sections of the strips that the panel rests on.</summary>
internal static class StripOutline
{
    private const double Offset = 6;

    /// <summary>A flat strip.</summary>
    public static IReadOnlyList<Primitive> Flat(double width, double thickness) =>
    [
        Polygon.Rectangle(new Bounds(0, 0, width, thickness), Stroke.Edge, Fill.Hatch),
        new Dimension(new Point(0, thickness), new Point(width, thickness), Offset, Text(width)),
        new Dimension(new Point(width, 0), new Point(width, thickness), -Offset, Text(thickness)),
    ];

    /// <summary>An angle of two alike legs.</summary>
    public static IReadOnlyList<Primitive> Angle(double leg, double thickness) =>
    [
        new Polygon(
            [new(0, 0), new(thickness, 0), new(thickness, leg - thickness), new(leg, leg - thickness), new(leg, leg), new(0, leg)], Stroke.Edge, Fill.Hatch),
        new Dimension(new Point(0, leg), new Point(leg, leg), Offset, Text(leg)),
        new Dimension(new Point(0, 0), new Point(0, leg), Offset, Text(leg)),
    ];

    private static string Text(double millimetres) => PlanFormat.AsSold(Length.FromMillimeters(millimetres));
}
