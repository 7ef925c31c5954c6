namespace StudioKit.Planning.Session;

/// <summary>A cover in a session.</summary>
/// <param name="Name">Its name.</param>
/// <param name="HoldsWater">Whether it is a tank.</param>
/// <param name="Lifted">Whether it is lifted for the picture.</param>
public sealed record SessionCover(string Name, bool HoldsWater, bool Lifted);
