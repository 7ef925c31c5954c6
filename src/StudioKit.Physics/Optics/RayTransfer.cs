namespace StudioKit.Physics.Optics;

/// <summary>What a piece of an optical system does to a ray close to the axis: a 2×2 ray-transfer matrix.</summary>
/// <remarks>A ray is its height y [m] and slope θ [rad]; it leaves as y′ = A·y + B·θ, θ′ = C·y + D·θ. Light runs from subject to sensor.</remarks>
/// <param name="A">Height out by height in [1].</param>
/// <param name="B">Height out by slope in [m].</param>
/// <param name="C">Slope out by height in [1/m]; minus the optical power.</param>
/// <param name="D">Slope out by slope in [1].</param>
public readonly record struct RayTransfer(double A, double B, double C, double D)
{
    /// <summary>Leaves every ray as it is.</summary>
    public static RayTransfer Nothing { get; } = new(1, 0, 0, 1);

    /// <summary>A·D − B·C [1]; 1 for every system that begins and ends in air.</summary>
    public double Determinant => (A * D) - (B * C);

    /// <summary>A stretch of air.</summary>
    /// <param name="length">Distance [m]; finite, negative to go back.</param>
    /// <exception cref="ArgumentOutOfRangeException">The distance is not finite.</exception>
    public static RayTransfer Gap(double length) => new(1, Guard.Finite(length), 0, 1);

    /// <summary>A thin lens, or a thick one from its front to its rear principal plane.</summary>
    /// <param name="power">Optical power, one over focal length [1/m]; finite, negative for a diverging lens.</param>
    /// <exception cref="ArgumentOutOfRangeException">The power is not finite.</exception>
    public static RayTransfer Lens(double power) => new(1, 0, -Guard.Finite(power), 1);

    /// <summary>A converter, from the image that the lens before it would form to the enlarged image on the sensor.</summary>
    /// <param name="factor">Enlargement k [1]; &gt; 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The factor is not finite or not above zero.</exception>
    public static RayTransfer Relay(double factor) => new(Guard.Positive(factor), 0, 0, 1 / factor);

    /// <summary>This piece followed by the next one.</summary>
    /// <param name="next">The piece that the light meets after this one.</param>
    public RayTransfer Then(in RayTransfer next) => new(
        (next.A * A) + (next.B * C),
        (next.A * B) + (next.B * D),
        (next.C * A) + (next.D * C),
        (next.C * B) + (next.D * D));
}
