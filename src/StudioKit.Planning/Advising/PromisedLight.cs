using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>A flash of a promised exposure: where it stands and what is set on it.</summary>
public sealed record PromisedLight
{
    /// <summary>Its place in the set-up's list of lights, from 0 [1].</summary>
    public required int Place { get; init; }

    /// <summary>Name of the flash.</summary>
    public required string Flash { get; init; }

    /// <summary>What it does.</summary>
    public required LightRole Role { get; init; }

    /// <summary>Bright window to panel for a flash below, to subject for all others.</summary>
    public required Length Distance { get; init; }

    /// <summary>Power to set.</summary>
    public required FlashPower Power { get; init; }

    /// <summary>Step of the flash's power dial.</summary>
    public required PowerStep PowerStep { get; init; }

    /// <summary>Power as the flash's dial shows it.</summary>
    public DialMark Mark => new(Power, PowerStep);

    /// <summary>What of a planned flash is promised.</summary>
    internal static PromisedLight Of(LightPlan light) => new()
    {
        Place = light.Place,
        Flash = light.Flash,
        Role = light.Role,
        Distance = light.Distance,
        Power = light.Power,
        PowerStep = light.PowerStep,
    };
}
