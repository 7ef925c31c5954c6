using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Sources;

namespace StudioKit.Field.Calibration;

/// <summary>How far a kit's own figures may be wrong before anything is measured: standard uncertainties in stops.</summary>
public sealed record CalibrationPrior
{
    private const double Exact = 0.01;

    /// <summary>Of a flash's light: guide numbers are quoted with a maker's own allowances [1].</summary>
    [Source("CommonPractice", "guide numbers flatter by up to a stop")]
    public double FlashLight { get; init; } = 0.5;

    /// <summary>Of the panel's transmittance: sheets of the same name differ [1].</summary>
    [Source("CommonPractice", "opal acrylic varies by batch and thickness")]
    public double PanelTransmittance { get; init; } = 0.3;

    /// <summary>Of the camera's clip point: cameras keep 0.3 to 1 stop above the standard [1].</summary>
    [Source("CommonPractice", "headroom above ISO 12232 saturation")]
    public double CameraClipPoint { get; init; } = 0.5;

    /// <summary>Of what a dome, softbox or diffuser takes: the shape of its beam is a guess [1].</summary>
    [Source("CommonPractice", "losses of modifiers are quoted to a third of a stop at best")]
    public double ModifierLoss { get; init; } = LightUncertainty.Usual.Modifier.Value;

    /// <summary>Of single modifiers whose kit says how well their loss is known, in stops of light [1].</summary>
    public IReadOnlyDictionary<string, double> Modifiers { get; init; } = new Dictionary<string, double>();

    /// <summary>Of single flashes whose kit says how well their guide number is known, in stops of light [1].</summary>
    public IReadOnlyDictionary<string, double> Flashes { get; init; } = new Dictionary<string, double>();

    /// <summary>What a kit itself writes after <c>±</c>, and the usual for the rest.</summary>
    /// <param name="read">The kit as read, without corrections.</param>
    /// <remarks>An amount after <c>±</c> is taken as one standard deviation. Light goes with the square of the guide number.</remarks>
    [Source("CommonPractice", "a stated tolerance taken as a standard deviation")]
    public static CalibrationPrior Of(KitReadResult read)
    {
        ArgumentNullException.ThrowIfNull(read);
        var kit = read.Kit ?? throw new ArgumentException("The kit could not be read.", nameof(read));
        var usual = new CalibrationPrior();
        var flashes = kit.Flashes
            .Select((flash, i) => (flash.Name, Known: InStops(read, FormattableString.Invariant($"flashes[{i}].guide-number"), flash.GuideNumber.AtIso100.Meters, 2)))
            .Where(flash => flash.Known is not null).ToDictionary(flash => flash.Name, flash => flash.Known!.Value, StringComparer.Ordinal);
        var modifiers = kit.Modifiers
            .Select((modifier, i) => (modifier.Name, Known: InStops(read, FormattableString.Invariant($"modifiers[{i}].loss"), 1, 1)))
            .Where(modifier => modifier.Known is not null).ToDictionary(modifier => modifier.Name, modifier => modifier.Known!.Value, StringComparer.Ordinal);
        return usual with
        {
            Flashes = flashes,
            Modifiers = modifiers,
            PanelTransmittance = InStops(read, "panel.transmittance", kit.Panel.Transmittance, 1) ?? usual.PanelTransmittance,
            CameraClipPoint = InStops(read, "camera.clip-point", 1, 1) ?? usual.CameraClipPoint,
        };
    }

    internal double Of(CalibrationQuantity quantity, string flash) => quantity switch
    {
        CalibrationQuantity.FlashLight => Flashes.TryGetValue(flash, out var known) ? known : FlashLight,
        CalibrationQuantity.PanelTransmittance => PanelTransmittance,
        _ => CameraClipPoint,
    };

    // A figure that is said to be exact could never be corrected; nothing that is measured is known better than this.
    private static double? InStops(KitReadResult read, string path, double value, int power) => read.Uncertainties.TryGetValue(path, out var known)
        ? Math.Max(Exact, UncertaintyInStops.Of(known, value, power))
        : null;
}
