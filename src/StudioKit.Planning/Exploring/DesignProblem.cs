using StudioKit.Kits.Editing;

namespace StudioKit.Planning.Exploring;

/// <summary>Something wrong with what a kit leaves open.</summary>
/// <param name="Kind">What is wrong.</param>
/// <param name="Choice">Name of the choice; empty where it is of none.</param>
/// <param name="Option">Name of the option; none where it is of none.</param>
/// <param name="Path">Path of the line in the kit that says so, e.g. <c>explore.choices[0].values[1]</c>; none where the kit has none.</param>
/// <param name="At">Where it stands in the text; none where it stands nowhere.</param>
/// <param name="Why">What the kit's own reader or editor says; none where the kind says it all.</param>
/// <param name="Other">Name of the other choice or option that it collides with; none otherwise.</param>
public sealed record DesignProblem(DesignProblemKind Kind, string Choice, string? Option, string? Path, WrittenValue? At, string? Why, string? Other);
