namespace StudioKit.Physics.Light.Covers;

/// <summary>A lamp that shows in a part of a cover.</summary>
/// <param name="Lamp">Which of the lamps, from 0 [1].</param>
/// <param name="Face">The part that it shows in.</param>
/// <param name="Right">Middle of what shows of it, right of the frame's middle as a share of the frame's width [1]; −½ to ½.</param>
/// <param name="Up">The same upwards, as a share of its height [1]; −½ to ½.</param>
/// <param name="OnSubject">Whether some of it lies over the subject.</param>
public sealed record CoverReflection(int Lamp, CoverFace Face, double Right, double Up, bool OnSubject);
