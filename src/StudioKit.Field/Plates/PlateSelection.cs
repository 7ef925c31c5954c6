namespace StudioKit.Field.Plates;

/// <summary>What of a log goes onto plates, and what does not.</summary>
/// <param name="Pictures">Portraits, in the log's order.</param>
/// <param name="LeftOut">Frames that no plate shows.</param>
/// <param name="PlacesKept">Subjects shown whose place the plates do not name [1].</param>
public sealed record PlateSelection(IReadOnlyList<PlatePicture> Pictures, IReadOnlyList<PlateOmission> LeftOut, int PlacesKept);
