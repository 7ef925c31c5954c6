namespace StudioKit.Field.Plates;

/// <summary>A frame that no plate shows.</summary>
/// <param name="FileName">Its file, under the name that leaves the log.</param>
/// <param name="Reason">Why.</param>
public sealed record PlateOmission(string FileName, PlateOmissionReason Reason);
