using StudioKit.Field.Analysis;
using StudioKit.Physics.Exposure;

namespace StudioKit.Field.Ladders;

/// <summary>One rung of a power ladder: the bare panel at a known power of the flash beneath it.</summary>
/// <param name="Power">Power the flash was set to.</param>
/// <param name="Analysis">What the frame says, all other settings being the same on every rung.</param>
public sealed record LadderFrame(FlashPower Power, FrameAnalysis Analysis);
