using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Structure;

/// <summary>Wind behind a porous screen.</summary>
/// <remarks>
/// Measured near the ground behind belts of trees with a tenth and a half of holes, three and nine heights behind them; none of it is left at fifteen. Formulas for fences promise
/// half as much wind or less, so that this errs on the safe side. Nearer than three heights it is taken to be as at three.
/// </remarks>
public static class WindBreak
{
    private const double Near = 3;
    private const double Far = 9;

    // 50 m and 150 m behind belts of 15 to 18 m.
    private static readonly (double Porosity, double Near, double Far)[] Measured = [(0.1, 0.4, 0.7), (0.5, 0.8, 0.9), (1, 1, 1)];

    /// <summary>Heights behind a screen from where on it stops nothing [1].</summary>
    [Source("Stredova2012", "no effect from 250 m on, behind 15 to 18 m")]
    public const double Reach = 15;

    /// <summary>How far the wind's direction is taken to swing to either side of where the screen stands against it [°] (common practice, no source).</summary>
    public const double Swing = 20;

    /// <summary>Wind behind a screen over that in the open.</summary>
    /// <param name="distance">Distance behind it in heights of the screen [1]; ≥ 0.</param>
    /// <param name="porosity">Share of holes [1]; 0 to 1. Under a tenth it counts as a tenth.</param>
    /// <returns>Speed over speed in the open [1]; 0.4 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">An argument is outside its range, or not finite.</exception>
    [Source("Stredova2012", "abstract: wind speed at 50 and 150 m in full foliage and without")]
    public static double SpeedLeft(double distance, double porosity)
    {
        var (x, holes) = (Guard.NonNegative(distance), Math.Max(Measured[0].Porosity, Guard.Between(porosity, 0, 1)));
        var upper = Array.FindIndex(Measured, row => row.Porosity >= holes) is 0 ? 1 : Array.FindIndex(Measured, row => row.Porosity >= holes);
        var (one, other) = (Measured[upper - 1], Measured[upper]);
        var share = (holes - one.Porosity) / (other.Porosity - one.Porosity);
        var (near, far) = (Between(one.Near, other.Near, share), Between(one.Far, other.Far, share));
        return x <= Near ? near : x <= Far ? Between(near, far, (x - Near) / (Far - Near)) : Between(far, 1, Math.Min(1, (x - Far) / (Reach - Far)));
    }

    private static double Between(double one, double other, double share) => one + ((other - one) * share);
}
