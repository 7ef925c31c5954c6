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

    /// <summary>Greatest deflection of a beam on two supports, force anywhere.</summary>
    /// <param name="force">Force P [N]; ≥ 0.</param>
    /// <param name="fromNearEnd">Distance to the nearer support b [m]; above 0, at most L/2.</param>
    /// <param name="span">Span L [m]; &gt; 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>P·b·(L² − b²)^(3/2)/(9√3·L·EI) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "deflections of simple beams")]
    public static double SupportedAt(double force, double fromNearEnd, double span, double stiffness)
    {
        var b = Guard.Between(Guard.Positive(fromNearEnd), 0, Guard.Positive(span) / 2);
        return Guard.NonNegative(force) * b * Math.Pow((span * span) - (b * b), 1.5)
            / (9 * Math.Sqrt(3) * span * Guard.Positive(stiffness));
    }

    /// <summary>Deflection of a beam with both ends held, even load.</summary>
    /// <param name="load">Load on a metre w [N/m]; ≥ 0.</param>
    /// <param name="span">Span L [m]; &gt; 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>w·L⁴/(384EI) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "fixed-end beams")]
    public static double HeldUniform(double load, double span, double stiffness) =>
        OfForce(load, span, stiffness) * span / 384;

    /// <summary>Deflection of a beam with both ends held, force in the middle.</summary>
    /// <param name="force">Force P [N]; ≥ 0.</param>
    /// <param name="span">Span L [m]; &gt; 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>P·L³/(192EI) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "fixed-end beams")]
    public static double HeldCentral(double force, double span, double stiffness) =>
        OfForce(force, span, stiffness) / 192;

    /// <summary>Deflection of a cantilever's end, force there.</summary>
    /// <param name="force">Force P [N]; ≥ 0.</param>
    /// <param name="span">Length L [m]; &gt; 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>P·L³/(3EI) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "deflections of cantilevers")]
    public static double CantileverEnd(double force, double span, double stiffness) =>
        OfForce(force, span, stiffness) / 3;

    /// <summary>Deflection of a cantilever's end, even load.</summary>
    /// <param name="load">Load on a metre w [N/m]; ≥ 0.</param>
    /// <param name="span">Length L [m]; &gt; 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>w·L⁴/(8EI) [m].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "deflections of cantilevers")]
    public static double CantileverUniform(double load, double span, double stiffness) =>
        OfForce(load, span, stiffness) * span / 8;

    private static double OfForce(double force, double span, double stiffness) =>
        Guard.NonNegative(force) * Math.Pow(Guard.Positive(span), 3) / Guard.Positive(stiffness);
}
