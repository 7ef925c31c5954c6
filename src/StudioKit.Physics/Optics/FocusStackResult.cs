using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>How a focus stack is taken and what it costs.</summary>
/// <param name="Frames">Number of frames [1]; ≥ 1.</param>
/// <param name="LargestStep">Largest step that keeps the overlap.</param>
/// <param name="Step">Even step that takes just these frames through the subject; zero for a single frame.</param>
/// <param name="Travel">From first to last focus.</param>
/// <param name="TurnsPerStep">Turns of the rail's screw for a step [1]; none without a rail.</param>
/// <param name="Time">From first to last frame.</param>
/// <param name="Flashes">Flashes fired in all [1].</param>
public sealed record FocusStackResult(
    int Frames, Length LargestStep, Length Step, Length Travel, double? TurnsPerStep, Duration Time, int Flashes);
