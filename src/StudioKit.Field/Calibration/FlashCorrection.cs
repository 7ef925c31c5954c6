namespace StudioKit.Field.Calibration;

/// <summary>Correction of one flash's light.</summary>
/// <param name="Flash">Name of the flash in the kit.</param>
/// <param name="Light">The correction; before and after are guide numbers in m.</param>
public sealed record FlashCorrection(string Flash, StopsCorrection Light);
