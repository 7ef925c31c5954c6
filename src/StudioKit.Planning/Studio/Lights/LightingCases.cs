using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Flashes;
using StudioKit.Physics.Exposure.Series;
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
        return new FlashCase
        {
            Name = flash.Name,
            GuideNumber = AtZoom(flash, light).GuideNumber.AtIso100,
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

    /// <summary>The camera set for one framing.</summary>
    public static CameraCase Camera(KitSpec kit, SetUpSpec setUp, PlannedFraming framing, FNumber aperture) => new()
    {
        Aperture = aperture,
        EffectiveFNumber = new FNumber(aperture.Value * framing.Plan.EffectiveApertureFactor),
        Shutter = ThirdStopSeries.FromMark(setUp.Shutter ?? kit.Camera.FlashSync),
        Iso = ThirdStopSeries.FromMark(setUp.Iso ?? kit.Camera.LowestIso),
        FilterLoss = FilterOf(kit, setUp)?.Loss ?? default,
        ClipPoint = kit.Camera.ClipPoint,
    };

    /// <summary>The shape of the light that leaves a flash in a set-up.</summary>
    public static BeamLobe Lobe(KitSpec kit, LightSpec light) =>
        ModifierOf(kit, light) is { } modifier ? BeamLobe.Round(modifier.LobeExponent) : BareLobe(FlashOf(kit, light), light);

    /// <summary>What the reader must know of the flash's numbers.</summary>
    public static IEnumerable<string> Caveats(KitSpec kit, LightSpec light)
    {
        var flash = FlashOf(kit, light);
        foreach (var caveat in AtZoom(flash, light).Caveats)
        {
            yield return $"{flash.Name}: {caveat}";
        }

        if (ModifierOf(kit, light) is { Loss: null } modifier && ModifierLoss.Caveat(LossOf(flash, light, modifier)) is { } unusual)
        {
            yield return $"{modifier.Name}: {unusual}";
        }
    }

    /// <summary>The flash that a light of a set-up names.</summary>
    public static FlashSpec FlashOf(KitSpec kit, LightSpec light) => kit.Flashes.First(flash => flash.Name == light.Flash);

    /// <summary>The filter that a set-up names.</summary>
    public static FilterSpec? FilterOf(KitSpec kit, SetUpSpec setUp) =>
        kit.Accessories.Filters.FirstOrDefault(filter => filter.Name == setUp.Filter);

    private static ModifierSpec? ModifierOf(KitSpec kit, LightSpec light) =>
        kit.Modifiers.FirstOrDefault(modifier => modifier.Name == light.Modifier);

    // Guide numbers that name no zoom say nothing of how one changes them.
    private static GuideNumberAtZoom AtZoom(FlashSpec flash, LightSpec light)
    {
        if (light.Zoom is not { } zoom)
        {
            return new GuideNumberAtZoom(flash.GuideNumber, []);
        }

        GuideNumber[] table = [.. flash.Zooms.Prepend(flash.GuideNumber).Where(row => row.Zoom is not null).DistinctBy(row => row.Zoom!.Value.Meters)];
        return table.Length > 0
            ? GuideNumberTable.At(table, zoom)
            : new GuideNumberAtZoom(flash.GuideNumber, ["its guide number names no zoom, so the zoom set makes no difference to it here."]);
    }

    private static Stops LossOf(FlashSpec flash, LightSpec light, ModifierSpec modifier) =>
        modifier.Loss ?? ModifierLoss.OnAxis(BareLobe(flash, light), BeamLobe.Round(modifier.LobeExponent), modifier.Transmittance);

    private static BeamLobe BareLobe(FlashSpec flash, LightSpec light) => flash switch
    {
        { BeamWidth: { } across, BeamHeight: { } up } => BeamLobe.FromCoverage(across, up),
        { BeamWidth: { } round } => BeamLobe.FromCoverage(round, round),
        _ => BeamLobe.FromZoom(light.Zoom ?? flash.GuideNumber.Zoom ?? UsualZoom),
    };

    // A head that names no zoom covers about the field of a 35 mm lens (common practice, no source).
    private static Length UsualZoom => Length.FromMillimeters(35);
}
