using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>Everything a kit carries, with its mass and where that comes from.</summary>
internal static class KitInventory
{
    /// <summary>Every line of the pack list, not yet in a bag, in the order things are needed on site.</summary>
    public static IReadOnlyList<PackedItem> Of(KitSpec kit, PanelPlan panel, FramePlan? frame) =>
        [.. Everything(kit, panel, frame).Where(item => item.Count > 0).OrderBy(item => item.Stage)];

    private static IEnumerable<PackedItem> Everything(KitSpec kit, PanelPlan panel, FramePlan? frame)
    {
        foreach (var item in kit.Pack.Items)
        {
            yield return new PackedItem
            {
                Name = item.Name,
                Count = item.Count,
                Mass = item.Mass * item.Count,
                Origin = MassOrigin.Weighed,
                Bag = item.Bag,
                Stage = item.Stage,
                LongestSide = item.Length,
                Fragile = item.Fragile,
            };
        }

        foreach (var item in Studio(kit, panel, frame).Concat(Lighting(kit)).Concat(Optics(kit)))
        {
            yield return item;
        }
    }

    private static IEnumerable<PackedItem> Studio(KitSpec kit, PanelPlan panel, FramePlan? frame)
    {
        if (frame is null)
        {
            yield break;
        }

        yield return new PackedItem
        {
            Name = $"frame, {frame.Geometry.Members.Count} pieces of {frame.PipeName} with fittings",
            Count = 1,
            Mass = frame.Mass,
            Origin = frame.MassOrigin,
            Stage = PackItemStage.SettingUp,
            LongestSide = frame.Geometry.Members.Select(member => member.CutLength).Max(),
        };
        yield return new PackedItem
        {
            Name = $"panel, {panel.Material}, {PlanFormat.Rectangle(panel.Width, panel.Depth)}",
            Count = 1,
            Mass = panel.Mass,
            Origin = panel.MassOrigin,
            Stage = PackItemStage.SettingUp,
            LongestSide = panel.Width > panel.Depth ? panel.Width : panel.Depth,
            Fragile = true,
        };
        if (kit.Panel.Skirts)
        {
            var area = 2 * (panel.Width.Meters + panel.Depth.Meters) * kit.Frame.Height.Meters;
            yield return Of("skirts, four", 1, Mass.FromKilograms(kit.Panel.SkirtArealMass.KilogramsPerSquareMeter * area), MassOrigin.FromGeometry, PackItemStage.SettingUp);
        }
    }

    private static IEnumerable<PackedItem> Lighting(KitSpec kit)
    {
        foreach (var flash in kit.Flashes)
        {
            yield return Given(flash.Name, flash.Mass, UsualMass.Flash, PackItemStage.SettingUp);
            if (flash.Cell is { } cell)
            {
                yield return Of(
                    $"{flash.Name}: cells in it, {cell.Name}", flash.CellCount, cell.Mass * flash.CellCount, MassOrigin.Weighed, PackItemStage.SettingUp);
                var spare = flash.CellCount * flash.SpareSets;
                yield return Of($"{flash.Name}: spare cells, {cell.Name}", spare, cell.Mass * spare, MassOrigin.Weighed, PackItemStage.Shooting);
            }
        }

        foreach (var modifier in kit.Modifiers)
        {
            yield return Given(modifier.Name, modifier.Mass, UsualMass.Modifier, PackItemStage.SettingUp);
        }
    }

    private static IEnumerable<PackedItem> Optics(KitSpec kit) =>
    [
        Given(kit.Camera.Name, kit.Camera.Mass, UsualMass.Camera, PackItemStage.Shooting),
        .. kit.Lenses.Select(lens => Given(lens.Name, lens.Mass, UsualMass.Lens, PackItemStage.Shooting)),
        .. kit.Accessories.ExtensionTubes.Select(tube => Given(tube.Name, tube.Mass, UsualMass.ExtensionTube, PackItemStage.Shooting)),
        .. kit.Accessories.CloseUpLenses.Select(lens => Given(lens.Name, lens.Mass, UsualMass.CloseUpLens, PackItemStage.Shooting)),
        .. kit.Accessories.Teleconverters.Select(converter => Given(converter.Name, converter.Mass, UsualMass.Teleconverter, PackItemStage.Shooting)),
        .. kit.Accessories.Filters.Select(filter => Given(filter.Name, filter.Mass, UsualMass.Filter, PackItemStage.Shooting)),
    ];

    private static PackedItem Given(string name, Mass? given, Mass usual, PackItemStage stage) =>
        Of(name, 1, given ?? usual, given is null ? MassOrigin.Assumed : MassOrigin.Weighed, stage) with { Fragile = true };

    private static PackedItem Of(string name, int count, Mass mass, MassOrigin origin, PackItemStage stage) =>
        new() { Name = name, Count = count, Mass = mass, Origin = origin, Stage = stage };
}
