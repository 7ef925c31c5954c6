using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Sheets.Building.Steps;

/// <summary>A part that a step's drawing names.</summary>
/// <param name="Text">What it is called.</param>
/// <param name="At">Where it is [m].</param>
/// <param name="Clear">How far from there its outline goes [m].</param>
internal sealed record StepName(string Text, FramePoint At, double Clear);
