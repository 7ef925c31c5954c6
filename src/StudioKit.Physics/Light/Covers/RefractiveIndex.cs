using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Covers;

/// <summary>Refractive indices of what clear covers are made of and filled with, for yellow light.</summary>
public static class RefractiveIndex
{
    /// <summary>Water at 20 °C [1].</summary>
    public const double Water = 1.333;

    /// <summary>Index of a clear material against air.</summary>
    /// <param name="material">What the wall is made of.</param>
    /// <returns>n [1]; 1.49 to 1.59.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There is no such material.</exception>
    [Source("RefractiveIndexTable", "sodium light, 589 nm; acrylic, polystyrene, polycarbonate, crown glass and polyester film")]
    public static double Of(ClearMaterial material) => material switch
    {
        ClearMaterial.Acrylic => 1.49,
        ClearMaterial.Glass => 1.52,
        ClearMaterial.Polystyrene => 1.59,
        ClearMaterial.Polycarbonate => 1.585,
        ClearMaterial.Polyester => 1.575,
        _ => throw new ArgumentOutOfRangeException(nameof(material), material, "Not a clear material."),
    };
}
