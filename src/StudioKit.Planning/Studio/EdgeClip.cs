using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>A clip along an edge of the panel.</summary>
/// <param name="FromLeft">Panel's left edge, as the camera sees it, to the clip.</param>
/// <param name="FromEdge">The edge along which it sits, back to the rail that it grips.</param>
public sealed record EdgeClip(Length FromLeft, Length FromEdge);
