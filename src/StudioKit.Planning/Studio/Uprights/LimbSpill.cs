using StudioKit.Physics.Exposure;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>Light of an upright sheet on one edge of the subject, at the camera angle at which it is strongest.</summary>
/// <param name="Limb">The edge, where the surface stands square to the line of sight.</param>
/// <param name="AgainstKey">Against the lights on the subject; negative where those are stronger.</param>
/// <param name="Level">Against a correct exposure by itself.</param>
/// <param name="RimShare">Width of the rim on which it is above <see cref="EdgeSpillPlan.RimFrom"/> against the lights on the subject, of the diameter of a round stem [1]; 0 to ½.</param>
public sealed record LimbSpill(SubjectLimb Limb, Stops AgainstKey, Stops Level, double RimShare);
