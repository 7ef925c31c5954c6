using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>Elastic sag and stress of a rectangular panel under its own weight, a spread load and a force at its centre.</summary>
public static class PanelSag
{
    /// <summary>Standard acceleration of gravity [m/s²].</summary>
    public const double Gravity = 9.80665;

    /// <summary>Sag and stress at the centre of a panel.</summary>
    /// <param name="panel">The panel and its loads.</param>
    /// <returns>Sag between free and held edges, stress, and caveats.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    /// <remarks>w = (α·q·a² + α_P·P)·a²/D; a real panel in a frame lies between the two bounds. Valid for t ≤ a/4 and w ≤ t/2.</remarks>
    [Source("Timoshenko1959", "arts. 30, 34, 44, 45")]
    [Source("Young2002", "§11.1, assumptions")]
    public static PanelSagResult AtCentre(PanelLoadCase panel)
    {
        ArgumentNullException.ThrowIfNull(panel);
        var a = Guard.Positive(panel.ShortSide.Meters, nameof(panel.ShortSide));
        var aspect = Guard.Between(panel.LongSide.Meters / a, 1, double.MaxValue, nameof(panel.LongSide));
        var t = Guard.Positive(panel.Sheet.Thickness.Meters, nameof(panel.Sheet));
        var least = SheetThickness.Least(t, panel.Sheet.Making);
        Guard.Positive(panel.Sheet.Density.KilogramsPerCubicMeter, nameof(panel.Sheet));
        var free = FreeSag(panel, aspect, t);

        return new PanelSagResult(
            Length.FromMeters(free),
            Length.FromMeters(HeldSag(panel, aspect, t)),
            Length.FromMeters(FreeSag(panel, aspect, least)),
            Pressure.FromPascals(Stress(panel, aspect, t)),
            Caveats(a, t, free));
    }

    internal static double Spread(PanelLoadCase panel, double t) =>
        Guard.NonNegative(panel.Spread.Pascals, nameof(panel.Spread))
        + (panel.Sheet.Density.KilogramsPerCubicMeter * Gravity * t);

    private static double FreeSag(PanelLoadCase panel, double aspect, double t) =>
        Sag(panel, t, PlateBending.UniformSag(aspect), PlateBending.CentralSag(aspect));

    private static double HeldSag(PanelLoadCase panel, double aspect, double t) =>
        Sag(panel, t, ClampedPlate.UniformSag(aspect), ClampedPlate.CentralSag(aspect));

    private static double Sag(PanelLoadCase panel, double t, double uniform, double central)
    {
        var a = panel.ShortSide.Meters;
        var rigidity = PlateBending.Rigidity(panel.Sheet.YoungsModulus.Pascals, t, panel.Sheet.PoissonRatio);
        var force = Guard.NonNegative(panel.Central.Newtons, nameof(panel.Central));
        return ((uniform * Spread(panel, t) * a * a) + (central * force)) * a * a / rigidity;
    }

    private static double Stress(PanelLoadCase panel, double aspect, double t)
    {
        var a = panel.ShortSide.Meters;
        var nu = panel.Sheet.PoissonRatio;
        var spread = 6 * PlateBending.UniformMoment(aspect, nu) * Spread(panel, t) * a * a / (t * t);
        var force = panel.Central.Newtons;
        return force > 0
            ? spread + PlateBending.CentralStress(force, a, panel.LongSide.Meters, t, panel.ContactRadius.Meters, nu)
            : spread;
    }

    internal static IReadOnlyList<StructuralCaveat> Caveats(double a, double t, double w) => [.. CaveatsOf(a, t, w)];

    private static IEnumerable<StructuralCaveat> CaveatsOf(double a, double t, double w)
    {
        if (t > a / 4)
        {
            yield return new StructuralCaveat(StructuralCaveatKind.ThickSheet);
        }

        if (w > t / 2)
        {
            yield return new StructuralCaveat(StructuralCaveatKind.DeepSag);
        }
    }
}
