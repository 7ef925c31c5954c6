using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Standing;

/// <summary>How large a light looks from the subject: what makes it soft or hard.</summary>
public static class AngularSize
{
    /// <summary>Angle that a side of a flat light fills, seen from before its middle.</summary>
    /// <param name="size">The side; ≥ 0 m.</param>
    /// <param name="distance">Light to subject; &gt; 0 m.</param>
    /// <returns>2·atan(s/2d); 0° to under 180°.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    [Source("Derived", "angle of an isosceles triangle at its apex")]
    public static Angle Of(Length size, Length distance) =>
        Angle.FromRadians(2 * Math.Atan(Guard.NonNegative(size.Meters, nameof(size)) / (2 * Guard.Positive(distance.Meters, nameof(distance)))));

    /// <summary>Solid angle of a rectangle seen from before its middle.</summary>
    /// <param name="width">One side; ≥ 0 m.</param>
    /// <param name="height">The other side; ≥ 0 m.</param>
    /// <param name="distance">Rectangle to point d; &gt; 0 m.</param>
    /// <returns>Ω = 4·asin(a·b/√((a² + d²)·(b² + d²))), a and b half the sides [sr]; 0 to under 2π.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    [Source("Derived", "solid angle of a rectangular pyramid")]
    public static double SolidAngle(Length width, Length height, Length distance)
    {
        var d = Guard.Positive(distance.Meters, nameof(distance));
        var (a, b) = (Guard.NonNegative(width.Meters, nameof(width)) / 2, Guard.NonNegative(height.Meters, nameof(height)) / 2);
        return 4 * Math.Asin(a * b / Math.Sqrt(((a * a) + (d * d)) * ((b * b) + (d * d))));
    }

    /// <summary>Solid angle of a disc seen from its axis.</summary>
    /// <param name="diameter">Diameter of the disc; ≥ 0 m.</param>
    /// <param name="distance">Disc to point d; &gt; 0 m.</param>
    /// <returns>Ω = 2π·(1 − d/√(d² + R²)) [sr]; 0 to under 2π.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A length is outside its range.</exception>
    [Source("Derived", "solid angle of a cone")]
    public static double SolidAngle(Length diameter, Length distance)
    {
        var d = Guard.Positive(distance.Meters, nameof(distance));
        return 2 * Math.PI * (1 - (d / double.Hypot(d, Guard.NonNegative(diameter.Meters, nameof(diameter)) / 2)));
    }
}
