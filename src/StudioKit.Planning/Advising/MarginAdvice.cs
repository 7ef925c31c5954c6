using StudioKit.Physics;
using StudioKit.Physics.Exposure.SetUps;

namespace StudioKit.Planning.Advising;

/// <summary>What brings the darkest visible place to a margin, as a test frame showed its light.</summary>
/// <param name="Advice">What to turn, planned with the light that the frame shows; none where nothing comes so near to the margin as the flash's dial goes.</param>
/// <param name="Missed">What stands in the way where there is none.</param>
public sealed record MarginAdvice(Advice? Advice, ValueList<MissedLimit> Missed);
