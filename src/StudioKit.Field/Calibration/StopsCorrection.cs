namespace StudioKit.Field.Calibration;

/// <summary>One measured correction with what it does to the kit's figure.</summary>
/// <param name="Stops">Correction in stops [1].</param>
/// <param name="PlusMinus">Its standard uncertainty in stops [1].</param>
/// <param name="Before">The kit's figure: a guide number in m, a transmittance [1] or a clip point in stops [1].</param>
/// <param name="After">The corrected figure, in the same unit.</param>
public sealed record StopsCorrection(double Stops, double PlusMinus, double Before, double After);
