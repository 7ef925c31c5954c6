using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Kits.Covers;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Supports;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>Everything a kit carries, with its mass, size and where they come from.</summary>
internal static class KitInventory
{
    /// <summary>Every line of the pack list, not yet in a bag, in the order things are needed on site.</summary>
    public static IReadOnlyList<PackedItem> Of(KitSpec kit, PanelPlan panel, FramePlan? frame) =>
        Numbered([.. kit.Pack.Items.Select(Own)
            .Concat(frame is null ? [] : StudioInventory.Of(kit, panel, frame))
            .Concat(kit.Flashes.SelectMany(Flash))
            .Concat(kit.Modifiers.Select(Modifier))
            .Concat(kit.Covers.Select(Cover))
            .Concat(kit.Holders.Where(holder => holder.IsCarried).Select(holder => Holder(kit, holder)))
            .Concat(kit.Supports.Where(support => support.IsCarried).Select(Support))
            .Concat(Optics(kit))
            .Where(item => item.Count > 0)
            .OrderBy(item => item.Stage)]);

    private static PackedItem Own(PackItemSpec item) => new()
    {
        Name = item.Name,
        Count = item.Count,
        Mass = item.Mass * item.Count,
        Origin = MassOrigin.Weighed,
        Kind = item.Kind,
        Bag = item.Bag,
        BagGiven = item.Bag is not null,
        Stage = item.Stage,
        Size = item is { Length: { } length, Width: { } width, Depth: { } depth } ? new BoxSize(length, width, depth) : null,
        Fragile = item.Fragile,
        Essential = item.Essential,
    };

    private static IEnumerable<PackedItem> Flash(FlashSpec flash)
    {
        yield return Given(flash.Name, GearMass.Of(flash), new BoxSize(flash.BodyLength, flash.BodyWidth, flash.BodyHeight), PackItemStage.SettingUp);
        if (flash.Cell is { } cell)
        {
            yield return Cells($"{flash.Name}: cells in it, {cell.Name}", flash, flash.CellCount, PackItemStage.SettingUp) with { InFlash = true };
            yield return Cells($"{flash.Name}: spare cells, {cell.Name}", flash, flash.CellCount * flash.SpareSets, PackItemStage.Shooting);
        }
    }

    private static PackedItem Cells(string name, FlashSpec flash, int count, PackItemStage stage) => new()
    {
        Name = name,
        Count = count,
        Mass = GearMass.Cells(flash, count),
        Origin = MassOrigin.Weighed,
        Stage = stage,
        CellsOf = flash.Name,
        Essential = false,
    };

    private static PackedItem Modifier(ModifierSpec modifier) => Given(
        modifier.Name, GearMass.Of(modifier), UsualSize.Modifier(modifier.Kind, modifier.Width, modifier.Height), PackItemStage.SettingUp) with
    { Fragile = false };

    private static PackedItem Cover(CoverSpec cover) => Given(cover.Name, GearMass.Of(cover), SizeOf(cover), PackItemStage.Shooting) with { Kind = PackItemKind.AnimalCare, SizeAssumed = false };

    private static BoxSize SizeOf(CoverSpec cover) => cover is { PackedLength: { } length, PackedWidth: { } width, PackedDepth: { } depth }
        ? new BoxSize(length, width, depth)
        : new BoxSize(cover.Case.OuterWidth, cover.Case.OuterDepth, cover.Height + cover.Wall);

    private static PackedItem Holder(KitSpec kit, HolderSpec holder)
    {
        if (holder.Built)
        {
            var built = BuiltHolder.Of(kit, holder);
            return Given(holder.Name, new MassStatement(built.MassOf(kit), MassOrigin.FromGeometry), UsualSize.Poles(kit.Frame.Pipe.OutsideDiameter, built), PackItemStage.SettingUp) with { Fragile = false };
        }

        var size = holder is { PackedLength: { } length, PackedWidth: { } width, PackedDepth: { } depth } ? new BoxSize(length, width, depth) : null;
        var item = Given(holder.Name, holder.Mass, UsualMass.Holder(holder.Kind), size ?? UsualSize.Holder(holder.Kind), PackItemStage.SettingUp);
        return item with { SizeAssumed = size is null, Fragile = false };
    }

    private static PackedItem Support(SupportSpec support) => Given(
        support.Name, support.Mass, UsualMass.Support(support.Kind),
        support is { Length: { } length, Width: { } width, Depth: { } depth } ? new BoxSize(length, width, depth) : UsualSize.Support(support.Kind), PackItemStage.SettingUp) with
    { Fragile = false, SizeAssumed = support.Length is null };

    private static IEnumerable<PackedItem> Optics(KitSpec kit) =>
    [
        Given(kit.Camera.Name, kit.Camera.Mass, UsualMass.Camera, UsualSize.Camera, PackItemStage.Shooting) with { Essential = true },
        .. kit.Lenses.Select(lens => Given(lens.Name, lens.Mass, UsualMass.Lens, UsualSize.Lens(lens.Length), PackItemStage.Shooting)),
        .. kit.Accessories.ExtensionTubes.Select(tube => Given(
            tube.Name, tube.Mass, UsualMass.ExtensionTube, UsualSize.Tube(tube.Length), PackItemStage.Shooting)),
        .. kit.Accessories.CloseUpLenses.Select(lens => Given(lens.Name, lens.Mass, UsualMass.CloseUpLens, UsualSize.CloseUpLens, PackItemStage.Shooting)),
        .. kit.Accessories.Teleconverters.Select(converter => Given(
            converter.Name, converter.Mass, UsualMass.Teleconverter, UsualSize.Teleconverter, PackItemStage.Shooting)),
        .. kit.Accessories.Filters.Select(filter => Given(filter.Name, filter.Mass, UsualMass.Filter, UsualSize.Filter, PackItemStage.Shooting)),
    ];

    private static PackedItem Given(string name, Mass? given, Mass usual, BoxSize usualSize, PackItemStage stage) =>
        Given(name, GearMass.Of(given, usual), usualSize, stage);

    private static PackedItem Given(string name, MassStatement mass, BoxSize usualSize, PackItemStage stage) => new()
    {
        Name = name,
        Count = 1,
        Mass = mass.Mass,
        Origin = mass.Origin,
        Stage = stage,
        Size = usualSize,
        SizeAssumed = true,
        Fragile = true,
        Essential = false,
    };

    // A lens and a tube may bear the same name, but every line of the list must be told apart.
    private static IReadOnlyList<PackedItem> Numbered(IReadOnlyList<PackedItem> items)
    {
        var seen = new Dictionary<string, int>(StringComparer.Ordinal);
        return [.. items.Select(item =>
        {
            var count = seen[item.Name] = seen.GetValueOrDefault(item.Name) + 1;
            return count == 1 ? item : item with { Name = FormattableString.Invariant($"{item.Name} ({count})") };
        })];
    }
}
