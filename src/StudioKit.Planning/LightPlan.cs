using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning;

/// <summary>One flash in a set-up at one framing.</summary>
public sealed record LightPlan
{
    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>What it does.</summary>
    public required LightRole Role { get; init; }

    /// <summary>Name of the modifier before it; none where it is bare.</summary>
    public string? Modifier { get; init; }

    /// <summary>Name of the thing that holds it; none for a hand, or a flash below.</summary>
    public string? Holder { get; init; }

    /// <summary>Zoom of the head, as focal length on a 36 mm × 24 mm sensor; none where neither the kit nor the guide number names one.</summary>
    public Length? Zoom { get; init; }

    /// <summary>Guide number at that zoom, full power and ISO 100.</summary>
    public Length? GuideNumber { get; init; }

    /// <summary>How the light that leaves it was measured to spread; none where it follows from zoom, coverage or modifier.</summary>
    public LightDistribution? Beam { get; init; }

    /// <summary>How far the light may lie to either side for want of a guide number for that zoom; 0 stops or more.</summary>
    public Stops ZoomDoubt { get; init; }

    /// <summary>How well the guide number itself is known: one standard deviation.</summary>
    public Stops GuideNumberUncertainty { get; init; }

    /// <summary>Bright window to panel for a flash below, to subject for all others.</summary>
    public required Length Distance { get; init; }

    /// <summary>Its place in the set-up's list of lights, from 0 [1].</summary>
    public int Place { get; init; }

    /// <summary>Power to set: the end of the dial where the level lies beyond it.</summary>
    public required FlashPower Power { get; init; }

    /// <summary>Power for exactly the level wanted, in stops against full; above 0 where full power does not suffice.</summary>
    public Stops ExactPower { get; init; }

    /// <summary>Step of the flash's power dial.</summary>
    public PowerStep PowerStep { get; init; }

    /// <summary>Stops between two clicks of it.</summary>
    public Stops DialStep => PowerStep.OneClick();

    /// <summary>Power as the flash's dial shows it.</summary>
    public DialMark Mark => new(Power, PowerStep);

    /// <summary>Power in both ways of the trade, e.g. "1/6.4 (1/8 + 1/3)".</summary>
    public string PowerText => Mark.Nominal;

    /// <summary>Power as one fraction where room is short, e.g. "1/6.4".</summary>
    public string PowerMark => Mark.AsOneFraction;

    /// <summary>How it is fired; none where the kit does not say.</summary>
    public FiringPlan? FiredBy { get; init; }

    /// <summary>What to dial where the camera meters it instead; none where the kit does not say that it can.</summary>
    public MeteredFlashPlan? Metered { get; init; }

    /// <summary>Light that a clear cover turns back on its way to the subject; 0 without one.</summary>
    public Stops CoverLoss { get; init; }

    /// <summary>Light that lens and hood hide from the subject; 0 where they hide none.</summary>
    public Stops LensLoss { get; init; }

    /// <summary>The account from guide number to sensor at this power.</summary>
    public required LightBudget Budget { get; init; }

    /// <summary>Flash duration at this power, t0.1.</summary>
    public required Duration FlashDuration { get; init; }

    /// <summary>Time to recharge after a flash at this power.</summary>
    public required Duration RecycleTime { get; init; }

    /// <summary>Flashes at this power from the cells carried, standby counted and a fifth of each set kept in reserve [1].</summary>
    public required int FlashesCarried { get; init; }
}
