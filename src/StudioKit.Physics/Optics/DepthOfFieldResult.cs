using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>How far the sharp zone reaches before and behind the focused plane.</summary>
/// <param name="Near">Towards the camera.</param>
/// <param name="Far">Away from the camera; none when everything behind is sharp.</param>
public sealed record DepthOfFieldResult(Length Near, Length? Far)
{
    /// <summary>Near and far together; none when everything behind is sharp.</summary>
    public Length? Total => Near + Far;
}
