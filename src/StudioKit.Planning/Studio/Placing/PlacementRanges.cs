using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Placements;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning.Studio.Placing;

/// <summary>What a search may change, always with what the kit has now among it.</summary>
internal sealed class PlacementRanges(KitSpec kit, PanelPlan panel, LightSpec own)
{
    // Nearer than this a clamp, a hand or the flash's own head is in the way (common practice, no source).
    private static readonly Length Nearest = Length.FromMillimeters(80);

    private static readonly Length HandWidth = Length.FromMillimeters(100);

    // Lower, no flash has room under the panel (common practice, no source).
    private static readonly Length Lowest = Length.FromMillimeters(150);

    private const int DistanceSteps = 6;

    /// <summary>The flash bare at each zoom setting and behind each modifier.</summary>
    public IReadOnlyList<LightSpec> Lights { get; } = [.. Ways(kit, own).DistinctBy(light => (light.Zoom, light.Modifier))];

    /// <summary>Heights of the panel: the frame's own, and a hand's width lower and higher.</summary>
    public IReadOnlyList<Length> PanelHeights { get; } =
        [kit.Frame.Height, .. new[] { kit.Frame.Height - HandWidth, kit.Frame.Height + HandWidth }.Where(height => height >= Lowest)];

    /// <summary>Distances from the nearest to the ground under the highest panel, in even factors.</summary>
    public IReadOnlyList<Length> Distances
    {
        get
        {
            var farthest = PanelHeights.Max() - Length.FromMillimeters(30);
            var factor = Math.Pow(farthest / Nearest, 1.0 / (DistanceSteps - 1));
            return [own.Distance, .. Enumerable.Range(0, DistanceSteps).Select(step => Nearest * Math.Pow(factor, step)).Where(length => length <= farthest)];
        }
    }

    /// <summary>Offsets to the right: in the middle, and pairs at a sixth and a third of the panel's width.</summary>
    public IReadOnlyList<Length> OffsetsRight { get; } = [.. new[] { own.OffsetRight, Length.Zero, panel.Width / 6, panel.Width / 4 }.Distinct()];

    /// <summary>Offsets to the back, about the middle of the flat part, counted as the light calculation counts.</summary>
    public IReadOnlyList<Length> OffsetsBack { get; } =
        [.. new[] { own.OffsetBack, Length.Zero, -panel.Depth / 6, panel.Depth / 6 }.Distinct().Select(back => back + PanelScene.FlatMiddle(panel))];

    /// <summary>One way to use the flash as the search wants it.</summary>
    public PlacementFlash FlashOf(LightSpec light)
    {
        var flash = LightingCases.Flash(kit, light);
        return new PlacementFlash
        {
            Name = FormattableString.Invariant($"{Lights.ToList().IndexOf(light)}"),
            Lobe = PanelScene.LobeOf(kit, light),
            Width = flash.HeadWidth,
            Height = flash.HeadHeight,
            FullPowerIntensityTime = PanelScene.FullPowerIntensityTime(flash),
            LowestPower = flash.LowestPower,
        };
    }

    private static IEnumerable<LightSpec> Ways(KitSpec kit, LightSpec own)
    {
        var flash = LightingCases.FlashOf(kit, own);
        yield return own;
        yield return own with { Modifier = null, Zoom = null };
        foreach (var zoom in flash.Zooms)
        {
            yield return own with { Modifier = null, Zoom = zoom.Zoom };
        }

        foreach (var modifier in kit.Modifiers)
        {
            yield return own with { Modifier = modifier.Name, Zoom = own.Zoom };
        }
    }
}
