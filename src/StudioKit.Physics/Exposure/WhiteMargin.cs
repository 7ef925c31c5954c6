using StudioKit.Physics.Exposure.Budgets;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Exposure;

/// <summary>Stops by which a lit translucent panel lies above sensor clipping.</summary>
/// <remarks>
/// Luminous exposure on the underside Q_E = (C/100)·(GN/d)²·P, leaving a Lambertian top as T·Q_E/π, seen by the sensor as H =
/// q·T·Q_E/(π·N_e²) against
/// 78/S. The darkest visible point is what counts.
/// </remarks>
public static class WhiteMargin
{
    private static readonly double LambertianExit = -Math.Log2(Math.PI);

    /// <summary>The white margin at the flash's own power.</summary>
    /// <param name="panel">Flash, panel and camera.</param>
    /// <returns>Stops above clipping, negative under it.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso12232", "image-plane exposure against 78/S")]
    public static Stops Level(WhiteMarginCase panel) => new(AtFullPower(panel) - panel.Flash.Power.StopsBelowFull);

    /// <summary>The same, line by line.</summary>
    /// <param name="panel">Flash, panel and camera.</param>
    /// <returns>Lines that add up to the white margin.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso12232", "image-plane exposure against 78/S")]
    public static LightBudget Budget(WhiteMarginCase panel)
    {
        _ = AtFullPower(panel);
        var known = panel.Uncertainty;
        return new LightBudget(
        [
            .. FlashTerms.Lines(panel.Flash, known),
            BudgetLine.Of(
                "Panel transmittance", Math.Log2(panel.Transmittance), $"{panel.Transmittance:P0} comes through",
                "Derived", "exitance = T·E", known.Transmittance),
            BudgetLine.Of(
                "Lambertian exit", LambertianExit, $"spread over the half-space, 1/π",
                "CommonPractice", "CIE vocabulary: Lambertian surface, M = π·L", known.Scatter),
            .. panel.DarkestPoint.Value == 0
                ? Enumerable.Empty<LightBudgetLine>()
                : [BudgetLine.Of(
                    "Darkest visible point", panel.DarkestPoint.Value, $"from the light map",
                    "Derived", "light map of the panel")],
            .. CameraTerms.Lines(panel.Camera, known),
            BudgetLine.Of(
                "Camera's clip point", -panel.Camera.ClipPoint.Value, $"{panel.Camera.ClipPoint} stops from 78/S",
                "CommonPractice", "clip test", known.ClipPoint),
        ]);
    }

    /// <summary>Power of the flash below for a wanted white margin, to the click of its dial that is not darker.</summary>
    /// <param name="panel">Flash, panel and camera; the flash's own power is not looked at.</param>
    /// <param name="target">White margin wanted.</param>
    /// <returns>The power setting and the margin it gives, or the end of the dial that stands in the way.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that its record gives.</exception>
    [Source("Iso12232", "image-plane exposure against 78/S, solved for the power")]
    public static PowerSolution PowerFor(WhiteMarginCase panel, Stops target) =>
        PowerDial.Solve(AtFullPower(panel), target.Value, panel.Flash, PowerRounding.Brighter);

    internal static double AtFullPower(WhiteMarginCase panel)
    {
        ArgumentNullException.ThrowIfNull(panel);
        var transmittance = Guard.Between(Guard.Positive(panel.Transmittance, nameof(panel.Transmittance)), 0, 1, nameof(panel.Transmittance));
        return FlashTerms.AtFullPower(panel.Flash) + Math.Log2(transmittance) + LambertianExit + panel.DarkestPoint.Value
            + CameraTerms.AgainstSaturation(panel.Camera) - panel.Camera.ClipPoint.Value;
    }
}
