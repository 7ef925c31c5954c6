namespace StudioKit.Field.Calibration.Drift;

/// <summary>A reading that could be taken next time, and what it would tell of a card's white margin.</summary>
/// <param name="Kind">What to read.</param>
/// <param name="Flash">With which flash.</param>
/// <param name="UncertaintyStops">How well it is read, in stops [1].</param>
/// <param name="Before">Standard uncertainty of the margin now, in stops [1].</param>
/// <param name="After">The same with this one reading more [1].</param>
public sealed record CandidateReading(CalibrationReadingKind Kind, string Flash, double UncertaintyStops, double Before, double After);
