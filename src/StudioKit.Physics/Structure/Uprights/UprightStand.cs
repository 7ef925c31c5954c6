using StudioKit.Physics.Sources;
using StudioKit.Physics.Structure.Checks;
using UnitsNet;

namespace StudioKit.Physics.Structure.Uprights;

/// <summary>Whether an upright sheet stands in the wind, and in how much of it.</summary>
public static class UprightStand
{
    // A hurricane has half of it: what stands in more is not asked to.
    private const double StrongestGust = 100;
    private const int Halvings = 50;

    /// <summary>Checks poles, sheet and what holds them, for a gust from before or behind.</summary>
    /// <param name="upright">The sheet on its site.</param>
    /// <returns>Its measures, its checks, and the strongest gust that all of them pass in.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    /// <remarks>
    /// Each check asks for a function of the gust that only grows, so the strongest gust is found by halving between nought and 100 m/s. What a frame's own feet hold is checked with the frame.
    /// </remarks>
    [Source("Derived", "the checks name their own sources")]
    public static UprightStandResult Of(UprightCase upright)
    {
        ArgumentNullException.ThrowIfNull(upright);
        Guard.Between(upright.WindSafety, 1, double.MaxValue, nameof(upright.WindSafety));
        Guard.Between(upright.StrengthSafety, 1, double.MaxValue, nameof(upright.StrengthSafety));
        var (shape, gust) = (new UprightShape(upright), Guard.NonNegative(upright.Gust.MetersPerSecond, nameof(upright.Gust)));
        var warmth = new PipeWarmth(upright.Pipe, upright.Air, upright.SunWarming);
        var checks = new UprightChecks(upright, shape, warmth);
        var (highest, weakest) = Highest(checks);
        return new UprightStandResult(
            Length.FromMeters(shape.Spacing),
            Length.FromMeters(shape.Play),
            Length.FromMeters(shape.Top),
            shape.Clips,
            Length.FromMeters(shape.ClipSpacing),
            Force.FromNewtons(upright.WindSafety * new UprightPush(shape, gust).Through / shape.Clips),
            Force.FromNewtons(checks.Pole.BarPush(gust)),
            Length.FromMeters(checks.Pole.Lean(gust)),
            Length.FromMeters(checks.Sheet.Bow(checks.Sheet.Load(gust))),
            Speed.FromMetersPerSecond(highest),
            weakest,
            [.. checks.At(gust)]);
    }

    /// <summary>Length of a pole over the ground, or over the rail that holds it.</summary>
    /// <param name="upright">The sheet on its site.</param>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    [Source("Derived", "geometry: lower edge over the cosine of the lean, and the sheet's height")]
    public static Length PoleOverFoot(UprightCase upright) => Length.FromMeters(new UprightShape(upright).Top);

    private static (double Gust, StructuralCheckKind Weakest) Highest(UprightChecks checks)
    {
        var (low, high) = (0.0, StrongestGust);
        for (var i = 0; i < Halvings; i++)
        {
            var middle = (low + high) / 2;
            (low, high) = checks.At(middle).All(check => check.Holds) ? (middle, high) : (low, middle);
        }

        return (low, checks.At(high).MaxBy(check => check.Ratio)!.Kind);
    }
}
