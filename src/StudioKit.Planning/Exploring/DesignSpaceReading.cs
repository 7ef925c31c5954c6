using StudioKit.Physics;

namespace StudioKit.Planning.Exploring;

/// <summary>What came of reading what a kit leaves open.</summary>
/// <param name="Space">The designs; none where there are problems.</param>
/// <param name="Problems">What stands in their way.</param>
/// <param name="IsUsual">Whether the kit marks nothing as open, so that the usual choices stand in.</param>
public sealed record DesignSpaceReading(DesignSpace? Space, ValueList<DesignProblem> Problems, bool IsUsual);
