namespace StudioKit.Field.Calibration;

/// <summary>A correction that was made of a power ladder.</summary>
/// <param name="Correction">The correction, with the tone curve where the ladder showed it.</param>
/// <param name="Result">What it was made of.</param>
public sealed record LadderCorrection(KitCorrection Correction, CalibrationResult Result);
