using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Covers;

/// <summary>What the walls of a cover weigh.</summary>
public static class CoverWalls
{
    /// <summary>Mass of a cover without water.</summary>
    /// <param name="cover">The cover.</param>
    /// <param name="material">What it is made of.</param>
    /// <returns>Density times the volume of walls and of the top, or of a tank's bottom.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A size is outside its range, or there is no such material.</exception>
    [Source("CommonPractice", "densities as datasheets have them: acrylic 1190, glass 2500, polystyrene 1050, polycarbonate 1200, polyester 1380 kg/m³")]
    public static Mass MassOf(CoverCase cover, ClearMaterial material)
    {
        ArgumentNullException.ThrowIfNull(cover);
        var (wall, wide, deep, high) = (Guard.NonNegative(cover.Wall.Meters, nameof(cover.Wall)), cover.Width.Meters, cover.Depth.Meters, cover.Height.Meters);
        var outside = (wide + (2 * wall)) * (deep + (2 * wall)) * (high + wall);
        var walls = cover.Shape switch
        {
            CoverShape.Dome => Math.PI * ((wide * wide / 4) + (high * high)) * wall,
            CoverShape.RoundTub => (outside - (wide * deep * high)) * Math.PI / 4,
            _ => outside - (wide * deep * high),
        };
        return Mass.FromKilograms(walls * Density(material));
    }

    private static double Density(ClearMaterial material) => material switch
    {
        ClearMaterial.Acrylic => 1190,
        ClearMaterial.Glass => 2500,
        ClearMaterial.Polystyrene => 1050,
        ClearMaterial.Polycarbonate => 1200,
        ClearMaterial.Polyester => 1380,
        _ => throw new ArgumentOutOfRangeException(nameof(material), material, "Not a clear material."),
    };
}
