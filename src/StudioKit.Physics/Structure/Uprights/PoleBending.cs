using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure.Uprights;

/// <summary>Deflections of a pole that is held at its foot; small deflections, shear left out.</summary>
public static class PoleBending
{
    /// <summary>Deflection of the top under an even load on a stretch of the pole.</summary>
    /// <param name="load">Load on a metre w [N/m]; ≥ 0.</param>
    /// <param name="from">Lower end of the stretch a [m]; ≥ 0.</param>
    /// <param name="to">Upper end of the stretch, the pole's top L [m]; &gt; a.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>w·(4L·(L³ − a³) − (L⁴ − a⁴))/(24EI) [m]; w·L⁴/(8EI) for a load from the foot up.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "deflections of cantilever beams")]
    public static double UniformToTop(double load, double from, double to, double stiffness)
    {
        var (a, l) = (Guard.NonNegative(from), Guard.Positive(to));
        Guard.Between(a, 0, l, nameof(from));
        return Guard.NonNegative(load) * ((4 * l * (Math.Pow(l, 3) - Math.Pow(a, 3))) - (Math.Pow(l, 4) - Math.Pow(a, 4))) / (24 * Guard.Positive(stiffness));
    }

    /// <summary>Pull at the top that a deflection asks for.</summary>
    /// <param name="deflection">Deflection of the top δ [m]; ≥ 0.</param>
    /// <param name="length">Length L [m]; &gt; 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>3EI·δ/L³ [N].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "deflections of cantilever beams")]
    public static double PullOfTop(double deflection, double length, double stiffness) =>
        3 * Guard.Positive(stiffness) * Guard.NonNegative(deflection) / Math.Pow(Guard.Positive(length), 3);

    /// <summary>Turn of a beam's end where a moment acts, on its two supports.</summary>
    /// <param name="moment">Moment M [N·m]; ≥ 0.</param>
    /// <param name="span">Span L [m]; ≥ 0.</param>
    /// <param name="stiffness">Bending stiffness EI [N·m²]; &gt; 0.</param>
    /// <returns>M·L/(3EI) [rad].</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Gere2009", "slopes of simple beams")]
    public static double EndTurn(double moment, double span, double stiffness) =>
        Guard.NonNegative(moment) * Guard.NonNegative(span) / (3 * Guard.Positive(stiffness));
}
