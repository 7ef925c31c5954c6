using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light.Covers;

/// <summary>Covers to look through.</summary>
internal static class SampleCovers
{
    public static CoverCase Tub { get; } = Of(CoverShape.Tub, 120, 100, 60, 2, 1.49);

    public static CoverCase RoundTub { get; } = Of(CoverShape.RoundTub, 100, 100, 60, 1, 1.59);

    public static CoverCase Dome { get; } = Of(CoverShape.Dome, 100, 100, 50, 2, 1.49);

    public static CoverCase Tank { get; } = Of(CoverShape.Tank, 120, 60, 80, 3, 1.52) with { Water = Length.FromMillimeters(60) };

    private static CoverCase Of(CoverShape shape, double width, double depth, double height, double wall, double index) => new()
    {
        Shape = shape,
        Width = Length.FromMillimeters(width),
        Depth = Length.FromMillimeters(depth),
        Height = Length.FromMillimeters(height),
        Wall = Length.FromMillimeters(wall),
        RefractiveIndex = index,
    };
}
