using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Greatest deflections and moments of straight beams; small deflections, shear left out.</summary>
public static class BeamBending
{
    /// <summary>Deflection of a beam on two supports, force in the middle.</summary>
    /// <param name="force">Force P [N]; ≥ 0.</param>
    /// <param name="span">Span L [m]; &gt; 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>P·L³/(48EI) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "deflections of simple beams")]
    public static double SupportedCentral(double force, double span, double stiffness) =>
        OfForce(force, span, stiffness) / 48;

    /// <summary>Deflection of a beam on two supports, even load.</summary>
    /// <param name="load">Load on a metre w [N/m]; ≥ 0.</param>
    /// <param name="span">Span L [m]; &gt; 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>5w·L⁴/(384EI) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "deflections of simple beams")]
    public static double SupportedUniform(double load, double span, double stiffness) =>
        5 * OfForce(load, span, stiffness) * span / 384;

    private static double OfForce(double force, double span, double stiffness) =>
        Guard.NonNegative(force) * Math.Pow(Guard.Positive(span), 3) / Guard.Positive(stiffness);
}
