using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Exposure.Flashes;

/// <summary>Shape of a flash's beam: intensity falls as cosⁿ of the angle off axis, with an exponent for each of two axes.</summary>
/// <remarks>
/// I(θ, φ) = I₀·cos^n(φ) θ with n(φ) = n₁·cos²φ + n₂·sin²φ, the two-axis lobe of Ashikhmin and Shirley. Equal exponents give a
/// round beam; 1 is Lambertian.
/// </remarks>
public readonly record struct BeamLobe
{
    /// <summary>Makes a lobe.</summary>
    /// <param name="exponentAcross">Exponent n₁ across [1]; ≥ 0.</param>
    /// <param name="exponentUp">Exponent n₂ up [1]; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An exponent is negative or not finite.</exception>
    public BeamLobe(double exponentAcross, double exponentUp)
    {
        ExponentAcross = Guard.NonNegative(exponentAcross);
        ExponentUp = Guard.NonNegative(exponentUp);
    }

    /// <summary>A matt glowing front: exponent 1 all round.</summary>
    public static BeamLobe Lambertian { get; } = new(1, 1);

    /// <summary>Exponent across [1].</summary>
    public double ExponentAcross { get; }

    /// <summary>Exponent up [1].</summary>
    public double ExponentUp { get; }

    /// <summary>Flux over axial intensity.</summary>
    /// <returns>Φ/I₀ = 2π/√((n₁ + 1)(n₂ + 1)) [sr].</returns>
    [Source("AshikhminShirley2000", "normalisation of the two-exponent lobe")]
    public double FluxPerAxialIntensity => 2 * Math.PI / Math.Sqrt((ExponentAcross + 1) * (ExponentUp + 1));

    /// <summary>A round beam.</summary>
    /// <param name="exponent">Exponent n [1]; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The exponent is negative or not finite.</exception>
    public static BeamLobe Round(double exponent) => new(exponent, exponent);

    /// <summary>The lobe that falls to half intensity at the edges of a coverage angle.</summary>
    /// <param name="across">Full angle across at half intensity; above 0°, under 180°.</param>
    /// <param name="up">Full angle up at half intensity; above 0°, under 180°.</param>
    /// <returns>Exponents n = ln 0.5/ln cos(angle/2) [1].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    [Source("Iso2827", "coverage angle; the cosⁿ form is an assumption")]
    public static BeamLobe FromCoverage(Angle across, Angle up) => new(ExponentOf(across.Radians), ExponentOf(up.Radians));

    /// <summary>The lobe of a zoom head set to a focal length.</summary>
    /// <remarks>The head is taken to fall to half intensity at the edges of the 36 mm × 24 mm picture of that focal length.</remarks>
    /// <param name="zoom">Zoom setting as focal length on a 36 mm × 24 mm sensor; &gt; 0 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">The focal length is not above zero.</exception>
    [Source("CommonPractice", "flash zoom marks name the focal length whose field is covered")]
    public static BeamLobe FromZoom(Length zoom) =>
        FromCoverage(BeamCoverage.Across(zoom), BeamCoverage.Up(zoom));

    /// <summary>Intensity off the axis relative to that on it.</summary>
    /// <param name="cosine">Cosine of the angle off axis [1]; −1 to 1. Behind the head it is dark.</param>
    /// <param name="shareAcross">cos²φ, the share of the direction's sideways part that lies across [1]; 0 to 1.</param>
    /// <returns>I/I₀ [1]; 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range.</exception>
    [Source("AshikhminShirley2000", "two-exponent lobe")]
    public double RelativeIntensity(double cosine, double shareAcross)
    {
        Guard.Between(cosine, -1, 1);
        Guard.Between(shareAcross, 0, 1);
        if (cosine <= 0)
        {
            return 0;
        }

        return Math.Pow(cosine, (ExponentAcross * shareAcross) + (ExponentUp * (1 - shareAcross)));
    }

    private static double ExponentOf(double fullAngle) =>
        -Math.Log(2) / Math.Log(Math.Cos(Guard.Between(fullAngle, 0.001, 3.141, "coverage angle") / 2));
}
