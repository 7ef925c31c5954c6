using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Kits.Lighting;
using StudioKit.Physics.Packing;
using UnitsNet;
using Shared = StudioKit.Physics.Packing.BagAssignmentResult;

namespace StudioKit.Planning.Packing;

/// <summary>What is carried, in which bag, by whom.</summary>
internal static class PackPlanner
{
    /// <summary>Plans the pack.</summary>
    /// <param name="inputs">What it follows from.</param>
    /// <param name="share">Shares things out to the bags.</param>
    public static PackPlan Plan(PackInputs inputs, Func<SharedOut, Shared?> share)
    {
        var (kit, panel, frame, workshop, uses) = inputs;
        var uprights = workshop?.Uprights ?? [];
        var inventory = KitInventory.Of(kit, panel, frame, workshop);
        var shared = share(new SharedOut(kit.Pack, [.. inventory]));
        var assigned = shared is null ? inventory : InBags(kit, inventory, shared);
        var longPieces = LongPieces.Of(kit, panel, frame, uprights, assigned);
        IReadOnlyList<PackedItem> items = [.. assigned.Select(item => LongPieces.GoesInside(longPieces, item) ? item with { Outside = false } : item)];
        var bags = shared is null ? [] : kit.Pack.Bags.Zip(shared.Bags).Select(pair => LoadOf(kit, pair.First, pair.Second, items)).ToList();
        var total = Mass.FromGrams(items.Sum(item => item.Mass.Grams) + kit.Pack.Bags.Sum(bag => bag.Mass.Grams));
        var plan = new PackPlan
        {
            Items = items,
            Bags = bags,
            People = shared?.People ?? [],
            Total = total,
            Cells = [.. kit.Flashes.Where(flash => flash.Cell is not null).Select(CellsOf)],
            ProvenMostEven = shared?.ProvenOptimal ?? true,
            Misfits = [.. items.Where(item => item.Bag is null && kit.Pack.Bags.Count > 0).Select(item => new Misfit(item.Name, item.Size) { Sold = item.Sold })],
            LongPieces = longPieces,
            LeaveAtHome = HomeChoice.Of(kit, items, total, uses),
        };
        return plan with { Told = [.. PackNotes.Of(kit, plan, uses)] };
    }

    /// <summary>Shares things out to the bags; none where there are no bags.</summary>
    public static Shared? Share(SharedOut what) => what.Pack.Bags.Count == 0 ? null : BagAssignment.Solve(PackCases.Of(what.Pack, what.Items));

    // What rides outside follows from the assignment; the panel that no bag takes is strapped on by PackCases.
    private static IReadOnlyList<PackedItem> InBags(KitSpec kit, IReadOnlyList<PackedItem> inventory, Shared shared)
    {
        var bagOf = shared.Bags.SelectMany(bag => bag.Items.Select(item => (item, bag))).ToDictionary(pair => pair.item, pair => pair.bag, StringComparer.Ordinal);
        return [.. inventory.Select(item => bagOf.TryGetValue(item.InFlash ? item.CellsOf! : item.Name, out var bag)
            ? item with { Bag = bag.Bag, Outside = bag.StrappedOutside.Contains(item.Name) || PackCases.RidesOutside(kit.Pack, item) }
            : item with { Bag = null })];
    }

    private static BagLoad LoadOf(KitSpec kit, BagSpec bag, PackedBag load, IReadOnlyList<PackedItem> items)
    {
        var outside = items.Where(item => item.Outside).Select(item => item.Name).ToHashSet(StringComparer.Ordinal);
        var carrier = kit.Pack.People.FirstOrDefault(person => person.Name == bag.Carrier);
        return new BagLoad
        {
            Name = bag.Name,
            Mass = load.Mass,
            HighestLoad = bag.HighestLoad,
            Carrier = bag.Carrier,
            ShareOfBodyMass = carrier is null ? null : load.Mass / carrier.BodyMass,
            VolumeShare = load.VolumeShare + GoneInside(kit, bag, load, outside, items),
            FromBottom = [.. load.Items.Where(name => !outside.Contains(name))],
        };
    }

    // What the assignment straps on and goes in from corner to corner after all takes its room like anything else.
    private static double GoneInside(KitSpec kit, BagSpec bag, PackedBag load, HashSet<string> outside, IReadOnlyList<PackedItem> items) => items
        .Where(item => load.StrappedOutside.Contains(item.Name) && !outside.Contains(item.Name))
        .Sum(item => item.Size is { } size ? item.Count * size.Volume.Liters / (kit.Pack.PackingFactor * PackCases.InsideOf(bag).Volume.Liters) : 0);

    private static CellStock CellsOf(FlashSpec flash)
    {
        var cell = flash.Cell!;
        return new CellStock
        {
            Flash = flash.Name,
            Cell = cell.Name,
            Count = flash.CellCount * (1 + flash.SpareSets),
            Spare = flash.CellCount * flash.SpareSets,
            EnergyEach = Energy.FromJoules(cell.Voltage.Volts * cell.Capacity.Coulombs),
            FullPowerFlashes = FlashBudget.For(0, 1, flash.FullPowerFlashes, 1 + flash.SpareSets).FlashesCarried,
            Air = AirCells.RuleFor(KindOf(cell.Chemistry), cell.Voltage, cell.Capacity),
        };
    }

    private static CellKind KindOf(CellChemistry chemistry) => chemistry switch
    {
        CellChemistry.NickelMetalHydride => CellKind.NickelMetalHydride,
        CellChemistry.Alkaline => CellKind.Alkaline,
        CellChemistry.LithiumMetal => CellKind.LithiumMetal,
        _ => CellKind.LithiumIon,
    };
}
