using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using UnitsNet;

namespace StudioKit.Physics.Tests.Light;

/// <summary>Simple studios that the tests start from.</summary>
internal static class Studio
{
    public static LightPanel Panel(double width = 0.6, double depth = 0.45, double height = 0.5, double reflectance = 0.35) => new()
    {
        Width = Length.FromMeters(width),
        Depth = Length.FromMeters(depth),
        Height = Length.FromMeters(height),
        UndersideReflectance = reflectance,
    };

    public static LightSurround WhiteSkirts { get; } = new() { SkirtReflectance = 0.8, FloorReflectance = 0.2 };

    public static LightSurround BlackGround { get; } = new() { FloorReflectance = 0 };

    public static Emitter Flash(double x = 0, double y = 0, double z = 0.1, double intensity = 1, double exponent = 1, double size = 0.05) => new()
    {
        Centre = new Position(x, y, z),
        Width = Length.FromMeters(size),
        Height = Length.FromMeters(size),
        Lobe = new CosineLobe(exponent, exponent),
        AxialIntensityTime = intensity,
    };

    public static LightScene Scene(LightPanel panel, LightSurround surround, params Emitter[] emitters) =>
        new() { Panel = panel, Surround = surround, Emitters = [.. emitters] };

    public static double[] All(LightMap map) =>
        [.. from row in Enumerable.Range(0, map.Grid.Rows) from column in Enumerable.Range(0, map.Grid.Columns) select map.Exposure(column, row)];
}
