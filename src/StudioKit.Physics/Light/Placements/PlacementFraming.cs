using StudioKit.Physics.Exposure;

namespace StudioKit.Physics.Light.Placements;

/// <summary>One framing that the flash below must serve.</summary>
/// <param name="View">What the camera sees.</param>
/// <param name="Camera">What it is set to.</param>
/// <param name="HighestMargin">Margin of the brightest visible point at which the veil reaches its limit; see <see cref="Veil.HighestMargin"/>.</param>
public sealed record PlacementFraming(CameraView View, CameraCase Camera, Stops HighestMargin);
