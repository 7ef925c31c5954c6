using StudioKit.Kits.Cameras;
using StudioKit.Physics.Optics;

namespace StudioKit.Planning.Framing;

/// <summary>A framing with the optics behind it.</summary>
/// <param name="Plan">What the plan says of it.</param>
/// <param name="Stack">The focused stack.</param>
/// <param name="Lens">The lens as the kit has it.</param>
internal sealed record PlannedFraming(FramingPlan Plan, OpticalStackResult Stack, LensSpec Lens);
