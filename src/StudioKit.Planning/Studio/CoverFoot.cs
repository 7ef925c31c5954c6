using UnitsNet;

namespace StudioKit.Planning.Studio;

/// <summary>Where a cover stands on the sheet, with the subject in its middle.</summary>
/// <param name="Name">Name of the cover.</param>
/// <param name="Width">Width over its walls.</param>
/// <param name="Depth">Depth over its walls.</param>
/// <param name="IsRound">Whether it is round.</param>
public sealed record CoverFoot(string Name, Length Width, Length Depth, bool IsRound);
