namespace StudioKit.Field.Calibration;

/// <summary>What a set of readings makes of a kit's figures.</summary>
/// <param name="Quantities">The corrected figures.</param>
/// <param name="Residuals">The readings, in the order given.</param>
/// <param name="Caveats">What to bear in mind, one sentence each.</param>
public sealed record CalibrationResult(
    IReadOnlyList<CalibratedQuantity> Quantities, IReadOnlyList<CalibrationResidual> Residuals, IReadOnlyList<string> Caveats);
