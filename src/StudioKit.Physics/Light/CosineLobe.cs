using System.Numerics;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>A beam whose intensity falls as cosⁿ of the angle from the axis, with its own exponent across and along the head.</summary>
/// <remarks>
/// I = I₀·cos^n(φ) θ with n(φ) = n₁·cos²φ + n₂·sin²φ, φ turning from width to height; nothing behind the front.
/// With equal exponents the beam is round; 1 is a Lambertian front.
/// </remarks>
public sealed record CosineLobe : LightLobe
{
    // Keeps log(0) out of the inner loop; what is emitted so near the front's plane is nothing anyway.
    private const double Grazing = 1e-9;

    /// <summary>Makes a beam from its exponents.</summary>
    /// <param name="exponentAcross">Exponent n₁ in the plane of the head's width [1]; ≥ 0.</param>
    /// <param name="exponentAlong">Exponent n₂ in the plane of the head's height [1]; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An exponent is negative or not finite.</exception>
    public CosineLobe(double exponentAcross, double exponentAlong)
    {
        ExponentAcross = Guard.NonNegative(exponentAcross);
        ExponentAlong = Guard.NonNegative(exponentAlong);
    }

    /// <summary>A perfectly diffusing front.</summary>
    public static CosineLobe Lambertian { get; } = new(1, 1);

    /// <summary>Exponent in the plane of the head's width [1].</summary>
    public double ExponentAcross { get; }

    /// <summary>Exponent in the plane of the head's height [1].</summary>
    public double ExponentAlong { get; }

    /// <inheritdoc/>
    /// <remarks>∫cosⁿ⁽ᵠ⁾θ dω = 2π/√((n₁ + 1)(n₂ + 1)); 2π/(n + 1) for a round beam.</remarks>
    [Source("Derived", "integral of the lobe over the half space; ∫dφ/(a·cos²φ + b·sin²φ) = 2π/√(ab)")]
    public override double FluxOverAxialIntensity => 2 * Math.PI / Math.Sqrt((ExponentAcross + 1) * (ExponentAlong + 1));

    /// <summary>The beam whose intensity is half of the axial one at given angles.</summary>
    /// <param name="across">Full width of the beam at half intensity; above 0, under 180°.</param>
    /// <param name="along">Full height of the beam at half intensity; above 0, under 180°.</param>
    /// <exception cref="ArgumentOutOfRangeException">An angle is outside its range.</exception>
    [Source("Derived", "n = ln 0.5/ln cos θ from cosⁿθ = 0.5")]
    public static CosineLobe FromFullWidths(Angle across, Angle along) =>
        new(Exponent(across.Radians / 2, nameof(across)), Exponent(along.Radians / 2, nameof(along)));

    internal override Vector<double> Relative(Vector<double> across, Vector<double> along, Vector<double> axial)
    {
        var lit = Vector.GreaterThan(axial, Vector<double>.Zero);
        return Vector.ConditionalSelect(lit, Power(across, along, axial), Vector<double>.Zero);
    }

    private Vector<double> Power(Vector<double> across, Vector<double> along, Vector<double> axial)
    {
        var cosine = Vector.Max(axial, new Vector<double>(Grazing));
        if (ExponentAcross == ExponentAlong)
        {
            return ExponentAcross == 1 ? cosine : Vector.Exp(ExponentAcross * Vector.Log(cosine));
        }

        var (a, b) = (across * across, along * along);
        var exponent = ((ExponentAcross * a) + (ExponentAlong * b)) / Vector.Max(a + b, new Vector<double>(double.Epsilon * 1e16));
        return Vector.Exp(exponent * Vector.Log(cosine));
    }

    private static double Exponent(double halfAngle, string name) =>
        Math.Log(0.5) / Math.Log(Math.Cos(Guard.Between(Guard.Positive(halfAngle, name), 0, (Math.PI / 2) - 1e-6, name)));
}
