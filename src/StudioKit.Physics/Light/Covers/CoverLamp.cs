using UnitsNet;

namespace StudioKit.Physics.Light.Covers;

/// <summary>A glowing front over the subject that may show in a wall.</summary>
/// <param name="At">Its middle, counted from the subject's foot on the sheet; it faces the subject.</param>
/// <param name="Width">Width of its front; ≥ 0.</param>
/// <param name="Height">Height of its front; ≥ 0.</param>
public sealed record CoverLamp(Position At, Length Width, Length Height);
