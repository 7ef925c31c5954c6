using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>Elastic sag and stress of a rectangular panel that rests on two opposite edges only, under its own weight, a spread load and a force at its centre.</summary>
public static class PanelStripSag
{
    // Far past the last column of the table of plates on four edges.
    private const double Endless = 1000;

    /// <summary>Greatest sag and stress of a panel.</summary>
    /// <param name="panel">The panel and its loads.</param>
    /// <param name="acrossShortSide">Whether it spans its short side, so that the long edges rest; else it spans the long one.</param>
    /// <returns>Sag and stress at the centre or in the middle of a free edge, whichever is more, and caveats.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    /// <remarks>Sags of weight and force are added where they are, so that a subject in the middle and a drooping edge are not taken for one place.</remarks>
    [Source("Timoshenko1959", "arts. 36, 48")]
    [Source("Young2002", "table 11.4, case 1b, endless strip")]
    public static PanelSagResult OnTwoEdges(PanelLoadCase panel, bool acrossShortSide)
    {
        ArgumentNullException.ThrowIfNull(panel);
        var shortSide = Guard.Positive(panel.ShortSide.Meters, nameof(panel.ShortSide));
        var longSide = shortSide * Guard.Between(panel.LongSide.Meters / shortSide, 1, double.MaxValue, nameof(panel.LongSide));
        var (span, breadth) = acrossShortSide ? (shortSide, longSide) : (longSide, shortSide);
        var t = Guard.Positive(panel.Sheet.Thickness.Meters, nameof(panel.Sheet));
        var sag = Sag(panel, span, breadth / span, t);
        return new PanelSagResult(
            Length.FromMeters(sag),
            null,
            Length.FromMeters(Sag(panel, span, breadth / span, SheetThickness.Least(t, panel.Sheet.Making))),
            Pressure.FromPascals(Stress(panel, span, breadth / span, t)),
            PanelSag.Caveats(span, t, sag));
    }

    // A strip narrower than a hundredth of its span is a beam: spread load bends it as it bends any other, a force by how little breadth there is to bear it.
    private static double Plate(double breadth) => Math.Max(breadth, TwoEdgePlate.Narrowest);

    private static double Crowding(double breadth) => Plate(breadth) / breadth;

    private static double Sag(PanelLoadCase panel, double span, double breadth, double t)
    {
        var nu = panel.Sheet.PoissonRatio;
        var rigidity = PlateBending.Rigidity(panel.Sheet.YoungsModulus.Pascals, t, nu);
        var spread = PanelSag.Spread(panel, t) * span * span;
        var force = Guard.NonNegative(panel.Central.Newtons, nameof(panel.Central)) * Crowding(breadth);
        var (uniform, central) = (TwoEdgePlate.UniformSag(Plate(breadth), nu), TwoEdgePlate.CentralSag(Plate(breadth), nu));
        return Math.Max((uniform.Centre * spread) + (central.Centre * force), (uniform.FreeEdge * spread) + (central.FreeEdge * force)) * span * span / rigidity;
    }

    // A force at the centre strains a free edge less than the centre, so the edge counts with the spread load alone.
    private static double Stress(PanelLoadCase panel, double span, double breadth, double t)
    {
        var nu = panel.Sheet.PoissonRatio;
        var spread = PanelSag.Spread(panel, t) * span * span;
        var moment = TwoEdgePlate.UniformMoment(Plate(breadth), nu);
        var force = panel.Central.Newtons;
        var local = force > 0
            ? PlateBending.CentralStress(force, span, Endless * span, t, panel.ContactRadius.Meters, nu)
              + (6 * TwoEdgePlate.CentralMomentOfFreeEdges(Plate(breadth), nu) * force * Crowding(breadth) / (t * t))
            : 0;
        return Math.Max((6 * moment.Centre * spread / (t * t)) + local, 6 * moment.FreeEdge * spread / (t * t));
    }
}
