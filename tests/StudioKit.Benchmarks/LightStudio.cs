using StudioKit.Physics.Light;
using StudioKit.Physics.Light.Lobes;
using UnitsNet;

namespace StudioKit.Benchmarks;

/// <summary>A box of 0.6 m × 0.45 m × 0.5 m with white skirts and a matt window under its middle.</summary>
internal static class LightStudio
{
    public static LightScene WhiteSkirts { get; } = new()
    {
        Panel = new LightPanel
        {
            Width = Length.FromMeters(0.6),
            Depth = Length.FromMeters(0.45),
            Height = Length.FromMeters(0.5),
            UndersideReflectance = 0.35,
        },
        Surround = new LightSurround { SkirtReflectance = 0.85, FloorReflectance = 0.3 },
        Emitters =
        [
            new Emitter
            {
                Centre = new Position(0, 0, 0.1),
                Width = Length.FromMeters(0.07),
                Height = Length.FromMeters(0.04),
                Lobe = CosineLobe.Lambertian,
                AxialIntensityTime = 1,
            },
        ],
    };
}
