using UnitsNet;

namespace StudioKit.Planning.Standing;

/// <summary>A place about the subject.</summary>
/// <param name="Right">To the right of it, as the camera sees it.</param>
/// <param name="Back">Beyond it, away from the camera.</param>
/// <param name="Up">Over it.</param>
public readonly record struct StandPoint(Length Right, Length Back, Length Up);
