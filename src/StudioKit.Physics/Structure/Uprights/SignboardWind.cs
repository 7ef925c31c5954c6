using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure.Uprights;

/// <summary>What wind does to a flat board that stands free on poles.</summary>
/// <remarks>
/// A board that is wider than high and nearer to the ground than a quarter of its height counts as a boundary wall in the standard; its mean coefficient is then less,
/// at most 1.7 over its length, so that the board's errs on the safe side.
/// </remarks>
public static class SignboardWind
{
    /// <summary>Force across the board over dynamic pressure and area [1].</summary>
    [Source("EN-1991-1-4", "7.4.3 (1), (2)")]
    public const double ForceCoefficient = 1.80;

    /// <summary>How far beside the board's middle the force may act, over its width [1].</summary>
    [Source("EN-1991-1-4", "7.4.3 (3)")]
    public const double Eccentricity = 0.25;

    /// <summary>Pressure across the board.</summary>
    /// <param name="speed">Gust v [m/s]; ≥ 0.</param>
    /// <returns>1.80·ρv²/2 [Pa].</returns>
    /// <exception cref="ArgumentOutOfRangeException">The speed is outside its range, or not finite.</exception>
    [Source("EN-1991-1-4", "7.4.3 (1), (2)")]
    public static double Pressure(double speed) => ForceCoefficient * Wind.Pressure(speed);

    /// <summary>The part of the force that the worse of two poles may have to bear.</summary>
    /// <param name="width">Width of the board b [m]; &gt; 0.</param>
    /// <param name="spacing">Poles from middle to middle s [m]; &gt; 0.</param>
    /// <returns>1/2 + 0.25·b/s [1]: three quarters for poles at the board's edges.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("EN-1991-1-4", "7.4.3 (3)")]
    public static double PoleShare(double width, double spacing) => 0.5 + (Eccentricity * Guard.Positive(width) / Guard.Positive(spacing));
}
