using UnitsNet;

namespace StudioKit.Planning.Covers;

/// <summary>A subject in a cover.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Length">How long it is.</param>
/// <param name="Height">How high.</param>
/// <param name="LeastSide">Least width and depth inside that leave it room.</param>
/// <param name="LeastHeight">Least height inside, or depth of water.</param>
/// <param name="Fits">Whether it has that room.</param>
public sealed record CoveredSubject(string Name, Length Length, Length Height, Length LeastSide, Length LeastHeight, bool Fits);
