using StudioKit.Physics.Exposure.Flashes;
using UnitsNet;

namespace StudioKit.Physics.Exposure.SetUps;

/// <summary>What one flash of a set-up is set to.</summary>
public sealed record LightSolution
{
    /// <summary>The flash, with its power set.</summary>
    public required FlashCase Flash { get; init; }

    /// <summary>The power found, the level it gives and the limit in the way.</summary>
    public required PowerSolution Power { get; init; }

    /// <summary>The account of a flash on the subject; none for the flash below.</summary>
    public SubjectExposureCase? Subject { get; init; }

    /// <summary>The account of the flash below; none for a flash on the subject.</summary>
    public WhiteMarginCase? Panel { get; init; }

    /// <summary>The light budget, line by line; drawn up when it is asked for.</summary>
    public LightBudget Budget => Panel is { } panel ? WhiteMargin.Budget(panel)
        : Subject is { } subject ? SubjectExposure.Budget(subject)
        : new LightBudget([]);

    /// <summary>Flash duration t0.1 at this power.</summary>
    public Duration FlashDuration => Flashes.FlashDuration.AtPower(Flash.FullPowerDuration, Power.Power);

    /// <summary>Recycle time at this power.</summary>
    public Duration RecycleTime => FlashEnergy.RecycleTime(Flash.RecycleTime, Power.Power);
}
