namespace StudioKit.Field.Calibration.Drift;

/// <summary>A reading that had a say in what is known of a kit.</summary>
/// <param name="Day">Day of its outing.</param>
/// <param name="Reading">The reading.</param>
/// <param name="Weight">How much it was believed [1]; above 0, at most 1.</param>
public sealed record UsedReading(DateOnly Day, CalibrationReading Reading, double Weight);
