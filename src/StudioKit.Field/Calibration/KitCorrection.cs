using StudioKit.Kits;
using StudioKit.Physics.Exposure;

namespace StudioKit.Field.Calibration;

/// <summary>Measured corrections of one kit, as kept in a file beside it.</summary>
public sealed record KitCorrection
{
    /// <summary>Name of the kit that was measured.</summary>
    public required string Kit { get; init; }

    /// <summary>Day of the measurement.</summary>
    public required DateOnly Date { get; init; }

    /// <summary>Corrections of flashes' light, by the flash's name.</summary>
    public IReadOnlyList<FlashCorrection> Flashes { get; init; } = [];

    /// <summary>Correction of the panel's transmittance; none where it was not measured.</summary>
    public StopsCorrection? PanelTransmittance { get; init; }

    /// <summary>Correction of the camera's clip point; none where it was not measured.</summary>
    public StopsCorrection? CameraClipPoint { get; init; }

    /// <summary>Names of readings that disagreed with the others.</summary>
    public IReadOnlyList<string> DisagreeingReadings { get; init; } = [];

    /// <summary>Makes a correction of a calibration.</summary>
    /// <param name="kit">The kit as written, without any correction.</param>
    /// <param name="result">The calibration.</param>
    /// <param name="date">Day of the measurement.</param>
    public static KitCorrection From(KitSpec kit, CalibrationResult result, DateOnly date)
    {
        ArgumentNullException.ThrowIfNull(kit);
        ArgumentNullException.ThrowIfNull(result);
        var transmittance = result.Quantities.Single(quantity => quantity.Quantity == CalibrationQuantity.PanelTransmittance);
        var clip = result.Quantities.Single(quantity => quantity.Quantity == CalibrationQuantity.CameraClipPoint);

        return new KitCorrection
        {
            Kit = kit.Name,
            Date = date,
            Flashes = [.. from quantity in result.Quantities
                          join flash in kit.Flashes on quantity.Flash equals flash.Name
                          where quantity.Quantity == CalibrationQuantity.FlashLight
                          select Flash(flash, quantity)],
            PanelTransmittance = Correction(transmittance, kit.Panel.Transmittance, Transmittance(kit.Panel.Transmittance, transmittance.CorrectionStops)),
            CameraClipPoint = Correction(clip, kit.Camera.ClipPoint.Value, kit.Camera.ClipPoint.Value + clip.CorrectionStops),
            DisagreeingReadings = [.. result.Residuals.Where(residual => residual.Disagrees).Select(residual => residual.Reading.Name)],
        };
    }

    /// <summary>The kit with the corrections in it; the kit given stays as it is.</summary>
    /// <param name="kit">The kit as written.</param>
    public KitSpec ApplyTo(KitSpec kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return kit with
        {
            Flashes = [.. kit.Flashes.Select(Corrected)],
            Panel = PanelTransmittance is { } transmittance
                ? kit.Panel with { Transmittance = Transmittance(kit.Panel.Transmittance, transmittance.Stops) }
                : kit.Panel,
            Camera = CameraClipPoint is { } clip
                ? kit.Camera with { ClipPoint = kit.Camera.ClipPoint + new Stops(clip.Stops) }
                : kit.Camera,
        };
    }

    private static FlashCorrection Flash(FlashSpec flash, CalibratedQuantity quantity) => new(
        flash.Name,
        new StopsCorrection(
            quantity.CorrectionStops,
            quantity.UncertaintyStops,
            flash.GuideNumber.AtIso100.Meters,
            flash.GuideNumber.AtIso100.Meters * GuideNumberFactor(quantity.CorrectionStops)));

    private static StopsCorrection Correction(CalibratedQuantity quantity, double before, double after) =>
        new(quantity.CorrectionStops, quantity.UncertaintyStops, before, after);

    // No sheet lets more light through than falls on it.
    private static double Transmittance(double planned, double stops) => Math.Min(1, planned * Math.Pow(2, stops));

    // Light goes with the square of the guide number.
    private static double GuideNumberFactor(double stops) => Math.Pow(2, stops / 2);

    private FlashSpec Corrected(FlashSpec flash)
    {
        if (Flashes.FirstOrDefault(entry => entry.Flash == flash.Name) is not { } correction)
        {
            return flash;
        }

        var factor = GuideNumberFactor(correction.Light.Stops);
        return flash with
        {
            GuideNumber = Scaled(flash.GuideNumber, factor),
            Zooms = [.. flash.Zooms.Select(zoom => Scaled(zoom, factor))],
        };
    }

    private static GuideNumber Scaled(GuideNumber number, double factor) => new(number.AtIso100 * factor, number.Zoom);
}
