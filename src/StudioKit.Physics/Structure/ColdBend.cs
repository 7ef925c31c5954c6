using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>How tightly a sheet may be swept without heat.</summary>
public static class ColdBend
{
    /// <summary>Smallest radius.</summary>
    /// <param name="thickness">Thickness t [m]; &gt; 0.</param>
    /// <param name="ratio">Radius in thicknesses [1]; &gt; 0; 330 is usual for cast acrylic.</param>
    /// <returns>Radius [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("CommonPractice", "cold-bend radius of acrylic in thicknesses")]
    public static double SmallestRadius(double thickness, double ratio) => Guard.Positive(thickness) * Guard.Positive(ratio);

    /// <summary>Bending stress in a sheet held to a radius.</summary>
    /// <param name="youngsModulus">Young's modulus E [Pa]; &gt; 0.</param>
    /// <param name="thickness">Thickness t [m]; &gt; 0.</param>
    /// <param name="radius">Radius of the middle of the sheet R [m]; &gt; 0.</param>
    /// <returns>E·t/(2R) [Pa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>Pure bending of a strip; stress relaxes as plastic creeps, but crazing does not heal.</remarks>
    [Source("Gere2009", "pure bending, curvature and strain")]
    public static double Stress(double youngsModulus, double thickness, double radius) =>
        Guard.Positive(youngsModulus) * Guard.Positive(thickness) / (2 * Guard.Positive(radius));
}
