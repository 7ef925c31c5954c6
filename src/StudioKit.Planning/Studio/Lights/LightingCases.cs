using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Series;
using StudioKit.Physics.Light.Lobes;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>A kit's flashes, camera and uncertainties as the calculations want them.</summary>
internal static class LightingCases
{
    /// <summary>One flash of a set-up where it stands.</summary>
    public static FlashCase Flash(KitSpec kit, LightSpec light)
    {
        var flash = FlashOf(kit, light);
        var modifier = ModifierOf(kit, light);
        var guideNumber = AtZoom(flash, light);
        return new FlashCase
        {
            Name = flash.Name,
            GuideNumber = guideNumber.GuideNumber.AtIso100,
            Zoom = guideNumber.GuideNumber.Zoom,
            MadeFrom = guideNumber.MadeFrom,
            ZoomDoubt = guideNumber.Doubt,
            PowerStep = flash.PowerStep,
            LowestPower = ThirdStopSeries.FromMark(flash.LowestPower),
            OutdoorCorrection = kit.Site.OutdoorCorrection,
            Modifier = modifier?.Name,
            ModifierLoss = modifier is null ? default : LossOf(flash, light, modifier),
            Distance = light.Distance,
            HeadWidth = modifier?.Width ?? flash.HeadWidth,
            HeadHeight = modifier?.Height ?? flash.HeadHeight,
            FullPowerDuration = flash.FullPowerDuration,
            RecycleTime = flash.RecycleTime,
        };
    }

    /// <summary>What is lost because a light does not meet the subject head-on as the camera sees it; none for a rim, which is set by the outline that it draws.</summary>
    public static Stops DirectionLoss(SetUpSpec setUp, LightSpec light) =>
        light.Role != LightRole.Rim && light.From is { } from ? MidwayIncidence.Loss(from, setUp.CameraPitches) : default;

    /// <summary>The camera set for one framing.</summary>
    public static CameraCase Camera(KitSpec kit, SetUpSpec setUp, PlannedFraming framing, FNumber aperture) => new()
    {
        Aperture = aperture,
        EffectiveFNumber = new FNumber(aperture.Value * framing.Plan.EffectiveApertureFactor),
        Shutter = ThirdStopSeries.FromMark(setUp.Shutter ?? kit.SyncOf(setUp)),
        Iso = ThirdStopSeries.FromMark(setUp.Iso ?? kit.Camera.LowestIso),
        FilterLoss = FilterOf(kit, setUp)?.Loss ?? default,
        ClipPoint = kit.Camera.ClipPoint,
        CoverLoss = CoverOptics.Of(kit, setUp, framing)?.ToLens ?? default,
    };

    /// <summary>How the light that leaves a flash in a set-up was measured to spread: by what is before it, else by the bare head at the zoom that it was measured at.</summary>
    public static LightDistribution? Measured(KitSpec kit, LightSpec light) => ModifierOf(kit, light) is { } modifier ? modifier.LightDistribution
        : FlashOf(kit, light) is var flash && IsMeasured(flash, light) ? flash.LightDistribution
        : null;

    /// <summary>The shape of the light that leaves a flash in a set-up.</summary>
    public static LightLobe Lobe(KitSpec kit, LightSpec light) => ModifierOf(kit, light) switch
    {
        { LightDistribution: { } measured } => measured.Lobe,
        { HalfBall: true } => new DomeLobe(),
        { } modifier => LobeOf(BeamLobe.Round(modifier.LobeExponent)),
        null => BareLobe(FlashOf(kit, light), light),
    };

    /// <summary>What the reader must know of the flash's numbers.</summary>
    public static IEnumerable<string> Caveats(KitSpec kit, LightSpec light)
    {
        var flash = FlashOf(kit, light);
        if (AtZoom(flash, light) is { MadeFrom: { } from } made)
        {
            yield return $"{flash.Name}: {ZoomCaveat(from, made)}";
        }

        if (flash.LightDistribution is { } measured && !IsMeasured(flash, light))
        {
            yield return $"{flash.Name}: its beam is that of the zoom {ZoomOf(flash, light)!.Value.Millimeters:0.#} mm, as {measured.FileName} was measured at another.";
        }

        if (ModifierOf(kit, light) is { Loss: null } modifier && ModifierLoss.Caveat(LossOf(flash, light, modifier)) is { } unusual)
        {
            yield return $"{modifier.Name}: {unusual}";
        }
    }

    /// <summary>The flash that a light of a set-up names.</summary>
    public static FlashSpec FlashOf(KitSpec kit, LightSpec light) => kit.Flashes.First(flash => flash.Name == light.Flash);

    /// <summary>Zoom that a light is used at: the set-up's, else the flash's own; none where that of the guide number stands.</summary>
    public static Length? ZoomOf(FlashSpec flash, LightSpec light) => light.Zoom ?? flash.Zoom;

    /// <summary>The filter that a set-up names.</summary>
    public static FilterSpec? FilterOf(KitSpec kit, SetUpSpec setUp) =>
        kit.Accessories.Filters.FirstOrDefault(filter => filter.Name == setUp.Filter);

    /// <summary>The modifier before a light.</summary>
    public static ModifierSpec? ModifierOf(KitSpec kit, LightSpec light) =>
        kit.Modifiers.FirstOrDefault(modifier => modifier.Name == light.Modifier);

    private static GuideNumberAtZoom AtZoom(FlashSpec flash, LightSpec light)
    {
        if (ZoomOf(flash, light) is not { } zoom)
        {
            return new GuideNumberAtZoom(flash.GuideNumber);
        }

        GuideNumber[] table = [.. flash.Zooms.Prepend(flash.GuideNumber).Where(row => row.Zoom is not null).DistinctBy(row => row.Zoom!.Value.Meters)];
        return table.Length > 0 ? GuideNumberTable.At(table, zoom) : GuideNumberTable.Unplaced(flash.GuideNumber, zoom);
    }

    private static string ZoomCaveat(GuideNumber from, GuideNumberAtZoom made) => from.Zoom is { } listed
        ? FormattableString.Invariant($"no guide number is listed for zoom {made.GuideNumber.Zoom!.Value.Millimeters:0.#} mm or beyond; {from.AtIso100.Meters:0.#} m at {listed.Millimeters:0.#} mm is taken as {made.GuideNumber.AtIso100.Meters:0.#} m, ±{made.Doubt.Value:0.0} stops. ")
            + MeasureIt
        : FormattableString.Invariant($"its guide number names no zoom, but is used at {made.GuideNumber.Zoom!.Value.Millimeters:0.#} mm, ±{made.Doubt.Value:0.0} stops. ") + MeasureIt;

    // The guide number is f-number times distance (ISO 1230).
    private const string MeasureIt = "List the maker's number for it, or measure: bare head at full power, flash meter at ISO 100 one metre off; the f-number it reads is the guide number in metres.";

    private static CosineLobe LobeOf(BeamLobe beam) => new(beam.ExponentAcross, beam.ExponentUp);

    private static Stops LossOf(FlashSpec flash, LightSpec light, ModifierSpec modifier) =>
        modifier.Loss ?? ModifierLoss.OnAxis(BareLobe(flash, light).FluxOverAxialIntensity, FluxOf(modifier), modifier.Transmittance);

    private static double FluxOf(ModifierSpec modifier) => modifier switch
    {
        { LightDistribution: { } measured } => measured.Lobe.FluxOverAxialIntensity,
        { HalfBall: true } => new DomeLobe().FluxOverAxialIntensity,
        _ => BeamLobe.Round(modifier.LobeExponent).FluxPerAxialIntensity,
    };

    private static LightLobe BareLobe(FlashSpec flash, LightSpec light) =>
        flash.LightDistribution is { } measured && IsMeasured(flash, light) ? measured.Lobe : LobeOf(BeamOf(flash, light));

    // A head is measured at the zoom that the kit gives it; at another its beam is another.
    private static bool IsMeasured(FlashSpec flash, LightSpec light) =>
        light.Zoom is not { } zoom || zoom.Meters == (flash.Zoom ?? flash.GuideNumber.Zoom ?? UsualZoom).Meters;

    private static BeamLobe BeamOf(FlashSpec flash, LightSpec light) => flash switch
    {
        { BeamWidth: { } across, BeamHeight: { } up } => BeamLobe.FromCoverage(across, up),
        { BeamWidth: { } round } => BeamLobe.FromCoverage(round, round),
        _ => BeamLobe.FromZoom(ZoomOf(flash, light) ?? flash.GuideNumber.Zoom ?? UsualZoom),
    };

    // A head that names no zoom covers about the field of a 35 mm lens (common practice, no source).
    private static Length UsualZoom => Length.FromMillimeters(35);
}
