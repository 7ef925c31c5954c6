using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>Something wrong with where a light stands.</summary>
/// <param name="Kind">What.</param>
/// <param name="Pitch">Camera angle at which it is; none where the camera has no part in it.</param>
public sealed record LightFault(LightFaultKind Kind, Angle? Pitch = null)
{
    /// <summary>By how much too far, too low or too high; none where it is no length.</summary>
    public Length? By { get; init; }

    /// <summary>By how many stops too bright; none where it is no matter of light.</summary>
    public Stops? Over { get; init; }

    /// <summary>Share of the light that is hidden [1]; none where none is.</summary>
    public double? Share { get; init; }
}
