using StudioKit.Physics;
using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Exploring;

/// <summary>A check that a design's plan fails.</summary>
/// <param name="Kind">What is checked.</param>
/// <param name="Parts">What it is about.</param>
public sealed record FailedCheck(PlanCheckKind Kind, ValueList<string> Parts);
