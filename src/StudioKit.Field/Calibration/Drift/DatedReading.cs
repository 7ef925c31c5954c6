namespace StudioKit.Field.Calibration.Drift;

/// <summary>A reading with the day of its outing.</summary>
/// <param name="Day">The day.</param>
/// <param name="Reading">The reading.</param>
public sealed record DatedReading(DateOnly Day, CalibrationReading Reading);
