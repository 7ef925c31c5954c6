using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>Whether a gust tips or slides a free-standing studio, and the ballast that stops it.</summary>
public static class WindTipping
{
    /// <summary>Moments about the feet on the lee side.</summary>
    /// <param name="studio">The studio and the gust.</param>
    /// <returns>Moments, safety, tipping speed and ballast.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    /// <remarks>
    /// M_o = Σ q·C_d·A·h, M_r = m·g·x + F_p·b with the windward pegs' hold F_p and the base b; ballast at the mass centre has the arm x, at the windward feet the whole base. The gust is
    /// taken at full strength at every height; lift under the panel is left out, as the panel is clipped flat to the wind.
    /// </remarks>
    [Source("NASA-Drag", "drag equation; moments about the feet")]
    public static WindTippingResult Of(WindTippingCase studio)
    {
        ArgumentNullException.ThrowIfNull(studio);
        var weight = Guard.Positive(studio.Mass.Kilograms, nameof(studio.Mass)) * PanelSag.Gravity;
        var arm = Guard.Positive(studio.LeewardArm.Meters, nameof(studio.LeewardArm));
        var q = Wind.Pressure(studio.Speed.MetersPerSecond);
        var area = studio.Surfaces.Sum(DragArea);
        var lever = studio.Surfaces.Sum(surface => DragArea(surface) * Guard.NonNegative(surface.Height, nameof(studio.Surfaces)));
        var windward = Guard.NonNegative(studio.WindwardArm.Meters, nameof(studio.WindwardArm));
        var holding = (weight * arm) + (Guard.NonNegative(studio.WindwardPegs.Newtons, nameof(studio.WindwardPegs)) * (arm + windward));
        var grip = (Guard.Positive(studio.Friction, nameof(studio.Friction)) * weight)
            + Guard.NonNegative(studio.AllPegs.Newtons, nameof(studio.AllPegs));
        var missing = (Guard.Between(studio.SafetyFactor, 1, double.MaxValue, nameof(studio.SafetyFactor)) * q * lever) - holding;

        return new WindTippingResult(
            Pressure.FromPascals(q),
            Force.FromNewtons(q * area),
            Torque.FromNewtonMeters(q * lever),
            Torque.FromNewtonMeters(holding),
            Ratio(holding, q * lever),
            lever > 0 ? Speed.FromMetersPerSecond(Math.Sqrt(2 * holding / (Wind.AirDensity * lever))) : null,
            Ballast(missing / arm),
            Ballast(missing / (arm + windward)),
            Ratio(grip, q * area),
            Ballast(((studio.SafetyFactor * q * area) - grip) / studio.Friction));
    }

    private static double DragArea(WindSurface surface) =>
        Guard.NonNegative(surface.Area, nameof(WindTippingCase.Surfaces)) * Guard.NonNegative(surface.Drag, nameof(WindTippingCase.Surfaces));

    private static double? Ratio(double holding, double pushing) => pushing > 0 ? holding / pushing : null;

    private static Mass Ballast(double newtons) => Mass.FromKilograms(Math.Max(0, newtons) / PanelSag.Gravity);
}
