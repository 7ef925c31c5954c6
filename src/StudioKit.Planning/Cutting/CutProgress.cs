namespace StudioKit.Planning.Cutting;

/// <summary>How far a search has come.</summary>
/// <param name="Phase">What the planner is doing, for a person to read.</param>
/// <param name="Best">Value of the best plan so far, in the plan's objective [1]; null before there is a whole plan.</param>
/// <param name="LowerBound">No plan can be below this [1].</param>
public sealed record CutProgress(string Phase, decimal? Best, decimal LowerBound);
