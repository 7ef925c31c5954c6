using StudioKit.Kits;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>What is carried, in which bag, by whom.</summary>
internal static class PackPlanner
{
    /// <summary>Plans the pack.</summary>
    public static PackPlan Plan(KitSpec kit, PanelPlan panel, FramePlan? frame)
    {
        var items = InBags(kit, KitInventory.Of(kit, panel, frame));
        var bags = kit.Pack.Bags.Select(bag => LoadOf(kit, bag, items)).ToList();
        var loose = items.Where(item => item.Bag is null).Sum(item => item.Mass.Grams);
        return new PackPlan
        {
            Items = items,
            Bags = bags,
            Total = Mass.FromGrams(loose + bags.Sum(bag => bag.Mass.Grams)),
            Cells = [.. kit.Flashes.Where(flash => flash.Cell is not null).Select(CellsOf)],
            Notes = [.. Notes(items)],
        };
    }

    private static IReadOnlyList<PackedItem> InBags(KitSpec kit, IReadOnlyList<PackedItem> items) => kit.Pack.Bags.Count == 0
        ? items
        : [.. items.Select(item => item with { Bag = item.Bag ?? kit.Pack.Bags[0].Name })];

    private static BagLoad LoadOf(KitSpec kit, BagSpec bag, IReadOnlyList<PackedItem> items)
    {
        var mass = bag.Mass + Mass.FromGrams(items.Where(item => item.Bag == bag.Name).Sum(item => item.Mass.Grams));
        var carrier = kit.Pack.People.FirstOrDefault(person => person.Name == bag.Carrier);
        return new BagLoad
        {
            Name = bag.Name,
            Mass = mass,
            HighestLoad = bag.HighestLoad,
            Carrier = bag.Carrier,
            ShareOfBodyMass = carrier is null ? null : mass / carrier.BodyMass,
        };
    }

    private static CellStock CellsOf(FlashSpec flash)
    {
        var cell = flash.Cell!;
        return new CellStock
        {
            Flash = flash.Name,
            Cell = cell.Name,
            Count = flash.CellCount * (1 + flash.SpareSets),
            EnergyEach = Energy.FromJoules(cell.Voltage.Volts * cell.Capacity.Coulombs),
            FullPowerFlashes = flash.FlashesPerSet * (1 + flash.SpareSets),
        };
    }

    private static IEnumerable<string> Notes(IReadOnlyList<PackedItem> items)
    {
        var assumed = items.Where(item => item.Origin == MassOrigin.Assumed).Select(item => item.Name).ToList();
        if (assumed.Count > 0)
        {
            yield return $"Weigh these, their mass is assumed: {string.Join(", ", assumed)}.";
        }
    }
}
