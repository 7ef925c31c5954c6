using UnitsNet;

namespace StudioKit.Physics.Structure.Frames;

/// <summary>Why a frame cannot even be drawn.</summary>
/// <param name="Kind">Why.</param>
/// <param name="Size">The length that the kind is about; nought where no length says it.</param>
public sealed record FrameObstacle(FrameObstacleKind Kind, Length Size);
