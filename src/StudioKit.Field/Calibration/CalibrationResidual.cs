namespace StudioKit.Field.Calibration;

/// <summary>What is left of one reading after the correction.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Before">Measured less planned, in stops [1].</param>
/// <param name="After">The same against the corrected plan, in stops [1].</param>
/// <param name="Weight">How much it was believed [1]; 1 for a reading that agrees with the others.</param>
/// <param name="Disagrees">Whether it lies further from what all the others say than its uncertainty allows.</param>
public sealed record CalibrationResidual(CalibrationReading Reading, double Before, double After, double Weight, bool Disagrees)
{
    /// <summary>Whether it was left out because it lies further from the plan than the kit's figures can be wrong: a slip, not a measurement of the kit.</summary>
    public bool IsImpossible { get; init; }

    /// <summary>Whether it had a say.</summary>
    public bool IsUsed => Weight > 0;
}
