using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Daylight;

/// <summary>Shadows that the sun throws on level ground.</summary>
public static class SunShadow
{
    /// <summary>Length of a shadow over the height of what throws it.</summary>
    /// <param name="seenHeight">Height h of the sun with refraction; above 0°, at most 90°.</param>
    /// <returns>1/tan h [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The height is out of its range.</exception>
    [Source("Derived", "a right triangle")]
    public static double LengthOverHeight(Angle seenHeight)
    {
        Guard.Positive(seenHeight.Degrees, nameof(seenHeight));
        return Math.Max(0, 1 / Math.Tan(Guard.Between(seenHeight.Radians, 0, Math.PI / 2, nameof(seenHeight))));
    }

    /// <summary>Direction in which a shadow falls.</summary>
    /// <param name="sunAzimuth">Azimuth of the sun from north through east; 0° to 360°.</param>
    /// <returns>The opposite; 0° to under 360°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The azimuth is out of its range.</exception>
    [Source("Derived", "away from the sun")]
    public static Angle Direction(Angle sunAzimuth) => Angle.FromDegrees((Guard.Between(sunAzimuth.Degrees, 0, 360, nameof(sunAzimuth)) + 180) % 360);
}
