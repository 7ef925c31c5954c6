namespace StudioKit.Physics.Light.Placements;

/// <summary>How far a search is.</summary>
/// <param name="Done">Candidates worked out [1].</param>
/// <param name="Total">Candidates in all [1].</param>
public readonly record struct PlacementProgress(int Done, int Total);
