using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Angles that a zoom flash head covers at a marked focal length, those of a 36 mm × 24 mm picture.</summary>
public static class BeamCoverage
{
    private const double HalfWidthMetres = 0.018;
    private const double HalfHeightMetres = 0.012;

    /// <summary>Full angle across.</summary>
    /// <param name="zoom">Zoom setting f as focal length on a 36 mm × 24 mm sensor; &gt; 0 m.</param>
    /// <returns>2·atan(18 mm/f) [rad].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The focal length is not above zero.</exception>
    [Source("CommonPractice", "field of a rectilinear lens; zoom marks name the focal length covered")]
    public static Angle Across(Length zoom) => Angle.FromRadians(FullAngle(HalfWidthMetres, zoom));

    /// <summary>Full angle up.</summary>
    /// <param name="zoom">Zoom setting f as focal length on a 36 mm × 24 mm sensor; &gt; 0 m.</param>
    /// <returns>2·atan(12 mm/f) [rad].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The focal length is not above zero.</exception>
    [Source("CommonPractice", "field of a rectilinear lens; zoom marks name the focal length covered")]
    public static Angle Up(Length zoom) => Angle.FromRadians(FullAngle(HalfHeightMetres, zoom));

    /// <summary>Solid angle of the field.</summary>
    /// <param name="zoom">Zoom setting f as focal length on a 36 mm × 24 mm sensor; &gt; 0 m.</param>
    /// <returns>4·atan(a·b/(f·√(a² + b² + f²))), a and b half the picture's sides [sr].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The focal length is not above zero.</exception>
    [Source("Derived", "solid angle of a right rectangular pyramid")]
    public static double SolidAngle(Length zoom)
    {
        var f = Guard.Positive(zoom.Meters, nameof(zoom));
        return 4 * Math.Atan(HalfWidthMetres * HalfHeightMetres / (f * double.Hypot(double.Hypot(HalfWidthMetres, HalfHeightMetres), f)));
    }

    private static double FullAngle(double half, Length zoom) =>
        2 * Math.Atan(half / Guard.Positive(zoom.Meters, nameof(zoom)));
}
