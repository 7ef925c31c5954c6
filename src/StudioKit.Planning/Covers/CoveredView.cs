using StudioKit.Physics;
using StudioKit.Physics.Light.Covers;
using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>One camera angle through a cover.</summary>
public sealed record CoveredView
{
    /// <summary>Angle of the line of sight under the horizontal.</summary>
    public required Angle Pitch { get; init; }

    /// <summary>Turn of the camera about its line of sight.</summary>
    public required Angle Roll { get; init; }

    /// <summary>What lies between lens and subject.</summary>
    public required CoverSight Seen { get; init; }

    /// <summary>Front glass to the wall or the water that is looked through; negative where there is no room.</summary>
    public required Length Room { get; init; }

    /// <summary>Flashes that show in the cover.</summary>
    public required ValueList<ShownFlash> Shown { get; init; }

    /// <summary>What spoils the picture; empty where the view is clear.</summary>
    public required ValueList<CoverFault> Faults { get; init; }
}
