using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Covers;

/// <summary>Light that a clear wall lets through and turns back: Fresnel's formulae at both faces, for both polarisations, with all light to and fro between them.</summary>
/// <remarks>
/// Light of the two faces adds without interference, as walls are thousands of wavelengths thick. Nothing is absorbed: acrylic and glass take less than
/// 0.5 % in some millimetres, and clear water 0.4 %/m in the blue to 60 %/m at the red end (Pope and Fry 1997), at most 0.05 stop in 6 cm.
/// </remarks>
public static class ClearWall
{
    private const double MostIndex = 10;
    private const double MostIncidence = Math.PI / 2;

    /// <summary>Share of unpolarised light that one face turns back.</summary>
    /// <param name="refractiveIndex">Index behind the face over that before it n [1]; 0.1 to 10, over 1 into the denser.</param>
    /// <param name="incidence">Angle from the face's normal [rad]; 0 to π/2.</param>
    /// <returns>Mean of the Fresnel reflectances of both polarisations [1]; ((n − 1)/(n + 1))² head-on, 1 where it is totally reflected.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "Fresnel formulae, §1.5")]
    public static double FaceReflectance(double refractiveIndex, double incidence = 0)
    {
        var (across, along) = Face(Guard.Between(refractiveIndex, 1 / MostIndex, MostIndex), Sine(incidence));
        return (across + along) / 2;
    }

    /// <summary>Share of unpolarised light that passes a wall in air, or between air and water.</summary>
    /// <param name="refractiveIndex">Index of the wall n [1]; 1 to 10.</param>
    /// <param name="incidence">Angle in air from the wall's normal [rad]; 0 to π/2.</param>
    /// <param name="beyond">Index behind the wall [1]; 1 for air, 1.333 for water.</param>
    /// <returns>Mean over both polarisations of (1 − r₁)(1 − r₂)/(1 − r₁r₂) [1], which is (1 − r)/(1 + r) in air.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "Fresnel formulae, §1.5; geometric series of light to and fro between the two faces")]
    public static double Transmittance(double refractiveIndex, double incidence = 0, double beyond = 1)
    {
        var n = Guard.Between(refractiveIndex, 1, MostIndex);
        var sine = Sine(incidence);
        var (firstAcross, firstAlong) = Face(n, sine);
        var (secondAcross, secondAlong) = Face(Guard.Between(beyond, 1, MostIndex) / n, sine / n);
        return (Through(firstAcross, secondAcross) + Through(firstAlong, secondAlong)) / 2;
    }

    /// <summary>Share of unpolarised light that a wall turns back.</summary>
    /// <inheritdoc cref="Transmittance" path="/param"/>
    /// <returns>1 − T [1]; 8 % for a sheet of n = 1.5 head-on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "what does not pass and is not absorbed")]
    public static double Reflectance(double refractiveIndex, double incidence = 0, double beyond = 1) => 1 - Transmittance(refractiveIndex, incidence, beyond);

    /// <summary>Light lost in a wall, a positive number of stops.</summary>
    /// <inheritdoc cref="Transmittance" path="/param"/>
    /// <returns>−log₂ T [stops]; 0.11 for an acrylic wall head-on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "transmittance in factors of two")]
    public static Stops Loss(double refractiveIndex, double incidence = 0, double beyond = 1) => Stops.FromRatio(1 / Transmittance(refractiveIndex, incidence, beyond));

    /// <summary>Share of evenly diffuse light, as of an overcast sky, that passes a wall.</summary>
    /// <param name="refractiveIndex">Index of the wall n [1]; 1 to 10.</param>
    /// <param name="beyond">Index behind the wall [1]; 1 for air, 1.333 for water.</param>
    /// <returns>2·∫T(θ)·sin θ·cos θ dθ over the half-space [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "transmittance weighted by the cosine over the half-space, midpoint rule in sin² θ")]
    public static double DiffuseTransmittance(double refractiveIndex, double beyond = 1)
    {
        // 2·sin θ·cos θ dθ is d(sin² θ); 64 midpoints leave less than 0.1 %.
        const int Steps = 64;
        return Enumerable.Range(0, Steps).Average(i => Transmittance(refractiveIndex, Math.Asin(Math.Sqrt((i + 0.5) / Steps)), beyond));
    }

    private static double Sine(double incidence) => Math.Sin(Guard.Between(incidence, 0, MostIncidence));

    private static double Through(double first, double second) => first * second < 1 ? (1 - first) * (1 - second) / (1 - (first * second)) : 0;

    // Both polarisations: across and along the plane of incidence; n is the index behind over that before.
    private static (double Across, double Along) Face(double n, double sine)
    {
        var inside = 1 - (sine * sine / (n * n));
        if (inside <= 0)
        {
            return (1, 1);
        }

        var (cosine, refracted) = (Math.Sqrt(1 - (sine * sine)), Math.Sqrt(inside));
        var across = (cosine - (n * refracted)) / (cosine + (n * refracted));
        var along = ((n * cosine) - refracted) / ((n * cosine) + refracted);
        return (across * across, along * along);
    }
}
