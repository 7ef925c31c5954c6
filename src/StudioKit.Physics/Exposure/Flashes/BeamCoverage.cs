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

    private static double FullAngle(double half, Length zoom) =>
        2 * Math.Atan(half / Guard.Positive(zoom.Meters, nameof(zoom)));
}
