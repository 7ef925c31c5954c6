using System.Numerics;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Lobes;

/// <summary>A beam whose intensity falls as cosⁿ of the angle from the axis, with its own exponent across and along the head.</summary>
/// <remarks>
/// I = I₀·cos^n(φ) θ with n(φ) = n₁·cos²φ + n₂·sin²φ, φ turning from width to height; nothing behind the front.
/// With equal exponents the beam is round; 1 is a Lambertian front.
/// </remarks>
public sealed record CosineLobe : LightLobe
{
    // Keeps log(0) out of the inner loop; what is emitted so near the front's plane is nothing anyway.
    private const double Grazing = 1e-9;

    /// <summary>Makes a beam from its shape.</summary>
    /// <param name="shape">Exponents across and up the head.</param>
    public CosineLobe(BeamLobe shape) => Shape = shape;

    /// <summary>Makes a beam from its exponents.</summary>
    /// <param name="exponentAcross">Exponent n₁ in the plane of the head's width [1]; ≥ 0.</param>
    /// <param name="exponentAlong">Exponent n₂ in the plane of the head's height [1]; ≥ 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">An exponent is negative or not finite.</exception>
    public CosineLobe(double exponentAcross, double exponentAlong)
        : this(new BeamLobe(exponentAcross, exponentAlong))
    {
    }

    /// <summary>A perfectly diffusing front.</summary>
    public static CosineLobe Lambertian { get; } = new(BeamLobe.Lambertian);

    /// <summary>Exponents across and up the head.</summary>
    public BeamLobe Shape { get; }

    /// <inheritdoc/>
    [Source("AshikhminShirley2000", "normalisation of the two-exponent lobe")]
    public override double FluxOverAxialIntensity => Shape.FluxPerAxialIntensity;

    internal override bool LightsBehind => false;

    internal override Vector<double> Relative(Vector<double> across, Vector<double> along, Vector<double> axial)
    {
        var lit = Vector.GreaterThan(axial, Vector<double>.Zero);
        return Vector.EqualsAll(lit, Vector<long>.Zero) ? Vector<double>.Zero : Vector.ConditionalSelect(lit, Power(across, along, axial), Vector<double>.Zero);
    }

    private Vector<double> Power(Vector<double> across, Vector<double> along, Vector<double> axial)
    {
        var cosine = Vector.Max(axial, new Vector<double>(Grazing));
        var (wide, high) = (Shape.ExponentAcross, Shape.ExponentUp);
        if (wide == high)
        {
            return wide == 1 ? cosine : VectorMath.Exp(wide * VectorMath.Log(cosine));
        }

        var (a, b) = (across * across, along * along);
        var exponent = ((wide * a) + (high * b)) / Vector.Max(a + b, new Vector<double>(double.Epsilon * 1e16));
        return VectorMath.Exp(exponent * VectorMath.Log(cosine));
    }
}
