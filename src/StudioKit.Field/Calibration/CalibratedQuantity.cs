namespace StudioKit.Field.Calibration;

/// <summary>One corrected figure.</summary>
/// <param name="Quantity">What it is.</param>
/// <param name="Flash">Name of the flash, for <see cref="CalibrationQuantity.FlashLight"/>; empty otherwise.</param>
/// <param name="PriorStops">Standard uncertainty before, in stops [1].</param>
/// <param name="CorrectionStops">Correction in stops [1]: more light, more transmittance or a higher clip point is positive.</param>
/// <param name="UncertaintyStops">Standard uncertainty after, in stops [1].</param>
public sealed record CalibratedQuantity(
    CalibrationQuantity Quantity, string Flash, double PriorStops, double CorrectionStops, double UncertaintyStops)
{
    /// <summary>What it is, in words.</summary>
    public string Name => NameOf(Quantity, Flash);

    /// <summary>A quantity in words.</summary>
    /// <param name="quantity">Which.</param>
    /// <param name="flash">Name of the flash, for <see cref="CalibrationQuantity.FlashLight"/>.</param>
    public static string NameOf(CalibrationQuantity quantity, string flash) => quantity switch
    {
        CalibrationQuantity.FlashLight => $"the light of flash '{flash}'",
        CalibrationQuantity.PanelTransmittance => "the panel's transmittance",
        _ => "the camera's clip point",
    };
}
