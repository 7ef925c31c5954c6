using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>Camera angles that lie side by side.</summary>
/// <param name="From">The lowest.</param>
/// <param name="To">The steepest.</param>
public sealed record PitchRange(Angle From, Angle To);
