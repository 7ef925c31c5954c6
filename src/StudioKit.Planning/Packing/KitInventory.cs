using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Kits.Covers;
using StudioKit.Kits.Lighting;
using StudioKit.Kits.Shelters;
using StudioKit.Kits.Supports;
using StudioKit.Kits.Triggers;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Studio;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>Everything a kit carries, with its mass, size and where they come from.</summary>
internal static class KitInventory
{
    /// <summary>Every line of the pack list, not yet in a bag, in the order things are needed on site.</summary>
    public static IReadOnlyList<PackedItem> Of(KitSpec kit, PanelPlan panel, FramePlan? frame, Workshop? workshop) =>
        Numbered([.. kit.Pack.Items.Select(Own)
            .Concat(frame is null ? [] : StudioInventory.Of(kit, panel, frame))
            .Concat((workshop?.Uprights ?? []).SelectMany(upright => UprightInventory.Of(kit, upright)))
            .Concat(workshop is null ? [] : HardwareInventory.Of(workshop.Hardware, workshop.Tools, workshop.Uprights, kit.Frame.Mass is not null))
            .Concat(kit.Flashes.SelectMany(Flash))
            .Concat(kit.Modifiers.Select(Modifier))
            .Concat(kit.Covers.Select(Cover))
            .Concat(kit.Holders.Where(holder => holder.IsCarried).Select(holder => Holder(kit, holder)))
            .Concat(kit.Supports.Where(support => support.IsCarried).Select(Support))
            .Concat(kit.Triggers.Where(trigger => trigger.IsCarried).Select(Trigger))
            .Concat(kit.Shelters.Select(Shelter))
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
        Size = Box(item.Length, item.Width, item.Depth),
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

    private static PackedItem Cover(CoverSpec cover) => Given(
        cover.Name, GearMass.Of(cover),
        Box(cover.PackedLength, cover.PackedWidth, cover.PackedDepth) ?? new BoxSize(cover.Case.OuterWidth, cover.Case.OuterDepth, cover.Height + cover.Wall), PackItemStage.Shooting) with
    { Kind = PackItemKind.AnimalCare, SizeAssumed = false };

    private static PackedItem Holder(KitSpec kit, HolderSpec holder)
    {
        if (holder.Built)
        {
            var built = BuiltHolder.Of(kit, holder);
            return Given(holder.Name, new MassStatement(built.MassOf(kit), MassOrigin.FromGeometry), UsualSize.Poles(kit.Frame.Pipe.OutsideDiameter, built), PackItemStage.SettingUp) with { Fragile = false };
        }

        return Sturdy(holder.Name, GearMass.Of(holder.Mass, UsualMass.Holder(holder.Kind)), Box(holder.PackedLength, holder.PackedWidth, holder.PackedDepth), UsualSize.Holder(holder.Kind));
    }

    private static PackedItem Support(SupportSpec support) =>
        Sturdy(support.Name, GearMass.Of(support.Mass, UsualMass.Support(support.Kind)), Box(support.Length, support.Width, support.Depth), UsualSize.Support(support.Kind));

    // Their cells are small and stay in them.
    private static PackedItem Trigger(TriggerSpec trigger)
    {
        var one = GearMass.Of(trigger.Mass, UsualMass.Trigger(trigger.Kind));
        var size = Box(trigger.PackedLength, trigger.PackedWidth, trigger.PackedDepth);
        return Given(trigger.Name, one, size ?? UsualSize.Trigger(trigger.Kind), PackItemStage.SettingUp) with
        {
            Count = trigger.Count,
            Mass = (one.Mass + ((trigger.Cell?.Mass ?? Mass.Zero) * trigger.CellCount)) * trigger.Count,
            SizeAssumed = size is null,
            Fragile = trigger.IsRadio,
        };
    }

    private static PackedItem Shelter(ShelterSpec shelter) =>
        Sturdy(shelter.Name, GearMass.Of(shelter.Mass, UsualMass.Shelter(shelter)), Box(shelter.PackedLength, shelter.PackedWidth, shelter.PackedDepth), UsualSize.Shelter(shelter)) with { Kind = PackItemKind.Weather };

    private static PackedItem Sturdy(string name, MassStatement mass, BoxSize? size, BoxSize usual) =>
        Given(name, mass, size ?? usual, PackItemStage.SettingUp) with { SizeAssumed = size is null, Fragile = false };

    private static BoxSize? Box(Length? first, Length? second, Length? third) =>
        (first, second, third) is ({ } length, { } width, { } depth) ? new BoxSize(length, width, depth) : null;

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
            return count == 1 ? item : item with { Name = FormattableString.Invariant($"{item.Name} ({count})"), Again = count };
        })];
    }
}
