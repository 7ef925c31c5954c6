using StudioKit.Field.Pictures;
using StudioKit.Kits;
using StudioKit.Kits.Lighting;
using StudioKit.Physics.Exposure;
using StudioKit.Planning.Expected;

namespace StudioKit.Field.Calibration;

/// <summary>Measured corrections of one kit, as kept in a file beside it.</summary>
public sealed record KitCorrection
{
    /// <summary>Most stops that a figure is ever corrected by [1]: sixteen times the light is no error of a figure but of the set-up.</summary>
    public const double MostStops = 4;

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

    /// <summary>Tone curve learnt of this camera; none where the standard one serves.</summary>
    public ToneCurve? ToneCurve { get; init; }

    /// <summary>Whether it corrects any figure of the kit.</summary>
    public bool CorrectsFigures => Flashes.Count > 0 || PanelTransmittance is not null || CameraClipPoint is not null;

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
            PanelTransmittance = Correction(transmittance, kit.Panel.Transmittance, CorrectedFigure.Of(kit.Panel.Transmittance, new Stops(transmittance.CorrectionStops))),
            CameraClipPoint = Correction(clip, kit.Camera.ClipPoint.Value, kit.Camera.ClipPoint.Value + clip.CorrectionStops),
            DisagreeingReadings = [.. result.Residuals.Where(residual => residual.Disagrees).Select(residual => residual.Reading.Name)],
        };
    }

    /// <summary>A reading of the kit with the corrections and their uncertainties in it; the one given stays as it is.</summary>
    /// <param name="read">The kit as read.</param>
    /// <param name="text">Text of the correction file, which becomes part of the content.</param>
    public KitReadResult ApplyTo(KitReadResult read, string text)
    {
        ArgumentNullException.ThrowIfNull(read);
        var kit = read.Kit ?? throw new ArgumentException("The kit could not be read.", nameof(read));
        if (!CorrectsFigures)
        {
            return read;
        }

        var values = Values(kit).ToList();
        var uncertainties = new Dictionary<string, Uncertainty>(read.Uncertainties, StringComparer.Ordinal);
        foreach (var value in values)
        {
            var amount = value.PlusMinus.Value;
            uncertainties[value.Path] = new Uncertainty(amount, UncertaintyKind.InStops, FormattableString.Invariant($"{amount:0.##} stop"));
        }

        return read with { Kit = ApplyTo(kit), Uncertainties = new(uncertainties), Corrections = new MeasuredCorrections(Date, [.. values], [.. DisagreeingReadings], text) };
    }

    /// <summary>The corrected figures one by one.</summary>
    /// <param name="kit">The kit as written.</param>
    public IEnumerable<MeasuredCorrection> Values(KitSpec kit)
    {
        ArgumentNullException.ThrowIfNull(kit);
        foreach (var (flash, i) in kit.Flashes.Select((flash, i) => (flash, i)))
        {
            if (Flashes.FirstOrDefault(entry => entry.Flash == flash.Name) is { } correction)
            {
                yield return Value($"guide number of {flash.Name}", FormattableString.Invariant($"flashes[{i}].guide-number"), correction.Light, "m");
            }
        }

        if (PanelTransmittance is { } panel)
        {
            yield return Value("panel transmittance", "panel.transmittance", panel, "");
        }

        if (CameraClipPoint is { } clip)
        {
            yield return Value("camera clip point", "camera.clip-point", clip, "stop");
        }
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
                ? kit.Panel with { Transmittance = CorrectedFigure.Of(kit.Panel.Transmittance, new Stops(transmittance.Stops)) }
                : kit.Panel,
            Camera = CameraClipPoint is { } clip
                ? kit.Camera with { ClipPoint = kit.Camera.ClipPoint + new Stops(clip.Stops) }
                : kit.Camera,
        };
    }

    private static MeasuredCorrection Value(string quantity, string path, StopsCorrection correction, string unit) =>
        new(quantity, path, correction.Before, correction.After, unit, new Stops(correction.Stops), new Stops(correction.PlusMinus));

    private static FlashCorrection Flash(FlashSpec flash, CalibratedQuantity quantity) => new(
        flash.Name,
        new StopsCorrection(
            quantity.CorrectionStops,
            quantity.UncertaintyStops,
            flash.GuideNumber.AtIso100.Meters,
            CorrectedFigure.Of(flash.GuideNumber, new Stops(quantity.CorrectionStops)).AtIso100.Meters));

    private static StopsCorrection Correction(CalibratedQuantity quantity, double before, double after) =>
        new(quantity.CorrectionStops, quantity.UncertaintyStops, before, after);

    private FlashSpec Corrected(FlashSpec flash)
    {
        if (Flashes.FirstOrDefault(entry => entry.Flash == flash.Name) is not { } correction)
        {
            return flash;
        }

        var light = new Stops(correction.Light.Stops);
        return flash with
        {
            GuideNumber = CorrectedFigure.Of(flash.GuideNumber, light),
            Zooms = [.. flash.Zooms.Select(zoom => CorrectedFigure.Of(zoom, light))],
        };
    }
}
