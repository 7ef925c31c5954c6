namespace StudioKit.Field.Calibration;

/// <summary>What a set of readings makes of a kit's figures.</summary>
/// <param name="Quantities">The corrected figures.</param>
/// <param name="Residuals">The readings, in the order given.</param>
/// <param name="Caveats">What to bear in mind, one sentence each.</param>
public sealed record CalibrationResult(
    IReadOnlyList<CalibratedQuantity> Quantities, IReadOnlyList<CalibrationResidual> Residuals, IReadOnlyList<string> Caveats)
{
    /// <summary>How well the readings that had a say agree with each other and with what the kit allows.</summary>
    public CalibrationFit Fit { get; init; } = new(0, 0, 1);

    /// <summary>Covariance of the corrections in square stops [1], in the order of <see cref="Quantities"/>; empty where none was worked out.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Covariance { get; init; } = [];
}
