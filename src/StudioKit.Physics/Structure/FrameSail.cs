using UnitsNet;

namespace StudioKit.Physics.Structure;

/// <summary>A sheet that stands upright on a frame's back rail.</summary>
/// <param name="Width">Side across the camera's view; &gt; 0.</param>
/// <param name="Height">Side from its lower to its upper edge; &gt; 0.</param>
/// <param name="LowerEdge">Lower edge over the back rail; ≥ 0.</param>
/// <param name="Mass">Mass of the sheet with its poles; ≥ 0.</param>
public sealed record FrameSail(Length Width, Length Height, Length LowerEdge, Mass Mass);
