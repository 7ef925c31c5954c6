using StudioKit.Kits.SetUps;
using UnitsNet;

namespace StudioKit.Planning.Firing;

/// <summary>Why a flash is not fired as a kit has it.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="SetUp">Name of the set-up.</param>
/// <param name="Flash">Name of the flash.</param>
/// <param name="Role">What it does.</param>
/// <param name="Place">Its place in the set-up's list of lights, from 0 [1].</param>
public sealed record TriggerFault(TriggerFaultKind Kind, string SetUp, string Flash, LightRole Role, int Place)
{
    /// <summary>What is to fire it; none where nothing is.</summary>
    public string? Trigger { get; init; }

    /// <summary>What stands in its way: the thing on the camera, the other flash, the sender; none where nothing does.</summary>
    public string? Other { get; init; }

    /// <summary>Group that it is in, where that is what is wrong.</summary>
    public string? Group { get; init; }

    /// <summary>Channels of receiver and sender, where they differ.</summary>
    public (int Its, int Senders)? Channels { get; init; }

    /// <summary>How many are carried and how many the set-up needs, where they are too few [1].</summary>
    public (int Carried, int Needed)? Counts { get; init; }

    /// <summary>Way to be bridged and how far it reaches, where that is too short.</summary>
    public (Length Way, Length Reach)? Range { get; init; }
}
