using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A place in the studio's side view.</summary>
/// <param name="FromFront">Behind the panel's front edge, away from the camera; negative before it.</param>
/// <param name="Up">Over level ground.</param>
public readonly record struct SidePoint(Length FromFront, Length Up);
