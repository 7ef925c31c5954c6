using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>An arrow along which a part is pushed.</summary>
/// <param name="At">Where it is pushed [m].</param>
/// <param name="Way">Unit vector of the push.</param>
/// <param name="Aside">Thickness of what it must stay beside [m].</param>
internal sealed record StepPush(FramePoint At, FramePoint Way, double Aside);
