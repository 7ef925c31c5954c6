using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Cross-section properties of round pipe.</summary>
public static class PipeSection
{
    /// <summary>Area of the wall.</summary>
    /// <param name="outsideDiameter">Outside diameter D [m]; &gt; 0.</param>
    /// <param name="wall">Wall thickness t [m]; above 0, at most D/2.</param>
    /// <returns>π(D − t)t [m²].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "properties of plane areas, circular ring")]
    public static double Area(double outsideDiameter, double wall)
    {
        Check(outsideDiameter, wall);
        return Math.PI * (outsideDiameter - wall) * wall;
    }

    /// <summary>Second moment of area about a diameter.</summary>
    /// <param name="outsideDiameter">Outside diameter D [m]; &gt; 0.</param>
    /// <param name="wall">Wall thickness t [m]; above 0, at most D/2.</param>
    /// <returns>π(D⁴ − d⁴)/64 with d = D − 2t [m⁴].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "properties of plane areas, circular ring")]
    public static double SecondMoment(double outsideDiameter, double wall)
    {
        Check(outsideDiameter, wall);
        return Math.PI / 64 * (Math.Pow(outsideDiameter, 4) - Math.Pow(outsideDiameter - (2 * wall), 4));
    }

    /// <summary>Section modulus.</summary>
    /// <param name="outsideDiameter">Outside diameter D [m]; &gt; 0.</param>
    /// <param name="wall">Wall thickness t [m]; above 0, at most D/2.</param>
    /// <returns>2I/D [m³].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "flexure formula, section modulus")]
    public static double Modulus(double outsideDiameter, double wall) =>
        2 * SecondMoment(outsideDiameter, wall) / outsideDiameter;

    /// <summary>Mass of a unit length.</summary>
    /// <param name="outsideDiameter">Outside diameter D [m]; &gt; 0.</param>
    /// <param name="wall">Wall thickness t [m]; above 0, at most D/2.</param>
    /// <param name="density">Density ρ [kg/m³]; &gt; 0.</param>
    /// <returns>ρA [kg/m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    /// <remarks>From the least wall a standard allows it comes out 4 to 8 % under catalogues, since the mean wall is thicker.</remarks>
    [Source("Derived", "mass = density × area × length")]
    public static double MassPerLength(double outsideDiameter, double wall, double density) =>
        Guard.Positive(density) * Area(outsideDiameter, wall);

    private static void Check(double outsideDiameter, double wall)
    {
        Guard.Positive(outsideDiameter);
        Guard.Between(Guard.Positive(wall), 0, outsideDiameter / 2);
    }
}
