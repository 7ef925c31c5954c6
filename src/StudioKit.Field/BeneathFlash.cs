using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Planning;
using StudioKit.Planning.Expected;
using UnitsNet;

namespace StudioKit.Field;

/// <summary>How the flash beneath the panel stood when a test frame was taken, with its limits.</summary>
/// <param name="Power">Power it was set to.</param>
/// <param name="LowestPower">Lowest power it can be set to.</param>
/// <param name="Distance">Bright window to panel; &gt; 0.</param>
/// <param name="ShortestDistance">How near it can stand.</param>
public sealed record BeneathFlash(FlashPower Power, FlashPower LowestPower, Length Distance, Length ShortestDistance)
{
    /// <summary>Step of its power dial.</summary>
    public PowerStep PowerStep { get; init; }

    /// <summary>The power as its dial shows it.</summary>
    public DialMark Mark => new(Power, PowerStep);

    /// <summary>
    /// Margin of the darkest visible place at a distance, in stops on any scale, as a plan has it; the inverse square law serves where there is none.
    /// </summary>
    public Func<Length, double?>? DarkestAt { get; init; }

    /// <summary>How the flash below stands in a plan.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="place">Set-up, framing and pitch; what it holds of the flash below.</param>
    /// <param name="shot">Power and distance where they differ from the plan's.</param>
    /// <param name="shortest">How near the flash can stand.</param>
    /// <param name="expected">What the plan expects to be read.</param>
    public static BeneathFlash Of(Plan plan, PlanPlace place, (FlashPower? Power, Length? Distance) shot, Length shortest, ExpectedLight expected)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(place);
        ArgumentNullException.ThrowIfNull(expected);
        var exposure = plan.Exposures.First(candidate => candidate.SetUp == place.SetUp.Name && candidate.Framing.Name == place.Framing);
        var light = exposure.Lights.First(candidate => candidate.Role.IsBackground());
        var power = shot.Power ?? light.Power;
        var spec = plan.Kit.Flashes.First(flash => flash.Name == light.Flash);
        return new BeneathFlash(power, ThirdStopSeries.FromMark(spec.LowestPower), shot.Distance ?? light.Distance, shortest)
        {
            PowerStep = spec.PowerStep,
            DarkestAt = distance => expected.Darkest(place.SetUp, place.Framing, new ShotSettings(power, distance))?.Value,
        };
    }
}
