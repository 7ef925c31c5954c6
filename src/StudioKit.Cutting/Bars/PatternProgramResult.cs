using StudioKit.Planning.Cutting.Kernel;

namespace StudioKit.Cutting.Bars;

/// <summary>What a search over given patterns came to.</summary>
/// <param name="Bars">The plan it found; null where it found none.</param>
/// <param name="Exhausted">Whether these patterns hold nothing better.</param>
/// <param name="Bound">No plan of these patterns under the ceiling costs less [ticks].</param>
internal sealed record PatternProgramResult(List<BarPattern>? Bars, bool Exhausted, long Bound);
