using StudioKit.Physics;

namespace StudioKit.Planning.Advising;

/// <summary>Distances that one flash can take without anything else being changed, nearest first.</summary>
/// <param name="Light">The flash.</param>
/// <param name="Steps">The distances.</param>
public sealed record LightDistances(LightPlan Light, ValueList<DistanceStep> Steps);
