using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.SetUps;
using UnitsNet;

namespace StudioKit.Planning.SetUps;

/// <summary>Which power the same exposure asks for from other distances.</summary>
internal static class DistanceTable
{
    private static readonly double[] Shares = [0.5, 0.7, 0.85, 1, 1.2, 1.4, 2];

    /// <summary>Powers at distances around the planned one, rounded to whole centimetres.</summary>
    public static IReadOnlyList<DistancePower> Of(LightSolution light) =>
        [.. Shares
            .Select(share => Math.Round(light.Flash.Distance.Centimeters * share))
            .Where(centimetres => centimetres >= 5)
            .Distinct()
            .Select(centimetres => At(light, Length.FromCentimeters(centimetres)) with { IsPlanned = centimetres == Math.Round(light.Flash.Distance.Centimeters) })];

    private static DistancePower At(LightSolution light, Length distance)
    {
        var target = light.Power.Target;
        var power = light.Panel is { } panel
            ? WhiteMargin.PowerFor(panel with { Flash = panel.Flash with { Distance = distance } }, target)
            : SubjectExposure.PowerFor(light.Subject! with { Flash = light.Subject.Flash with { Distance = distance } }, target);
        return new DistancePower(distance, power.IsReached ? power.Mark.AsOneFraction : power.Limit == PowerLimit.FullPower ? "too far" : "too close")
        {
            PowerStep = power.Mark.Step,
            Power = power.IsReached ? power.Power : null,
            ExactShare = power.IsReached ? Math.Min(1, power.ExactStops.Ratio) : null,
        };
    }
}
