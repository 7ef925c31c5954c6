using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light;

/// <summary>Light lost by reflection at the clear walls of a dish or box that the subject waits in.</summary>
public static class ClearContainer
{
    /// <summary>Share of unpolarised light that one face turns back.</summary>
    /// <param name="refractiveIndex">Index of the wall against air n [1]; ≥ 1. 1.49 for acrylic, 1.52 for glass.</param>
    /// <param name="incidence">Angle from the face's normal [rad]; 0 to under π/2.</param>
    /// <returns>Mean of the Fresnel reflectances of both polarisations [1]; ((n − 1)/(n + 1))² head-on.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("BornWolf1999", "Fresnel formulae, §1.5")]
    public static double FaceReflectance(double refractiveIndex, double incidence = 0)
    {
        var n = Guard.Between(refractiveIndex, 1, 10);
        var (sine, cosine) = Math.SinCos(Guard.Between(incidence, 0, (Math.PI / 2) - 1e-9));
        var inside = Math.Sqrt(1 - (sine * sine / (n * n)));
        var across = (cosine - (n * inside)) / (cosine + (n * inside));
        var along = ((n * cosine) - inside) / ((n * cosine) + inside);
        return ((across * across) + (along * along)) / 2;
    }

    /// <summary>Share of light that passes a number of clear walls, each with two faces.</summary>
    /// <param name="refractiveIndex">Index of the wall against air n [1]; ≥ 1.</param>
    /// <param name="walls">Walls in the light's way [1]; 1 to 10.</param>
    /// <param name="incidence">Angle from the walls' normal [rad]; 0 to under π/2.</param>
    /// <returns>T = (1 − R)/(1 + (2w − 1)·R) [1], light to and fro between all faces counted, absorption left out.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "incoherent stack of 2w equal faces; for polarised light the mean reflectance is an approximation")]
    public static double Transmittance(double refractiveIndex, int walls = 1, double incidence = 0)
    {
        var faces = 2 * (int)Guard.Between(walls, 1, 10);
        var r = FaceReflectance(refractiveIndex, incidence);
        return (1 - r) / (1 + ((faces - 1) * r));
    }

    /// <summary>Light lost by a number of clear walls, a positive number of stops.</summary>
    /// <inheritdoc cref="Transmittance" path="/param"/>
    /// <returns>−log₂ T [stops]; 0.11 for one acrylic wall.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A number is outside its range.</exception>
    [Source("Derived", "transmittance in factors of two")]
    public static Stops Loss(double refractiveIndex, int walls = 1, double incidence = 0) =>
        Stops.FromRatio(1 / Transmittance(refractiveIndex, walls, incidence));
}
