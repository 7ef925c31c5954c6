using StudioKit.Field.Pictures;
using StudioKit.Field.Scale;

namespace StudioKit.Field.Plates;

/// <summary>A picture file at hand for a logged frame.</summary>
/// <param name="Path">The file.</param>
/// <param name="Seen">Its size as seen.</param>
/// <param name="Recorded">What its sidecar says of its scale; none where it says nothing that holds for it.</param>
public sealed record PlateFile(string Path, PixelDimensions Seen, RecordedScale? Recorded);
