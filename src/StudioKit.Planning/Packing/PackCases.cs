using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>A kit's bags, people and things as the calculations want them.</summary>
internal static class PackCases
{
    /// <summary>Everything to be shared out.</summary>
    public static PackCase Of(PackSpec pack, IReadOnlyList<PackedItem> items) => new()
    {
        Items = [.. Carried(items).Zip(items.Where(item => !item.InFlash)).Select(pair => RidesOutside(pack, pair.Second) ? StrappedOn(pack, pair.First) : pair.First)],
        Bags = [.. pack.Bags.Select(bag => new CarryingBag(bag.Name, InsideOf(bag), bag.Mass, bag.HighestLoad, bag.Carrier))],
        Carriers = [.. pack.People.Select(person => new Carrier(person.Name, person.BodyMass))],
        HighestShare = pack.HighestShare,
        PackingFactor = pack.PackingFactor,
    };

    /// <summary>Every thing that moves by itself; the cells in a flash count with it.</summary>
    public static IReadOnlyList<CarriedItem> Carried(IReadOnlyList<PackedItem> items) =>
        [.. items.Where(item => !item.InFlash).Select(item => Carried(item) is var thing && item.CellsOf is null
            ? thing with { Mass = thing.Mass + InIt(items, item.Name) }
            : thing)];

    private static Mass InIt(IReadOnlyList<PackedItem> items, string flash) =>
        Mass.FromGrams(items.Where(item => item.InFlash && item.CellsOf == flash).Sum(item => item.Mass.Grams));

    // What is lost without a thing follows from framings and set-ups.
    private static CarriedItem Carried(PackedItem item) => new()
    {
        Name = item.Name,
        Mass = item.Mass / item.Count,
        Count = item.Count,
        Origin = item.Origin,
        Size = item.Size,
        Bag = item.Bag,
        NeededAt = (int)item.Stage,
        Fragile = item.Fragile,
        Essential = item.Essential,
    };

    /// <summary>Inside of a bag.</summary>
    public static BoxSize InsideOf(BagSpec bag) => new(bag.InsideLength, bag.InsideWidth, bag.InsideDepth);

    /// <summary>A panel or an upright sheet that no bag takes rides flat against the largest one, in a sleeve.</summary>
    public static bool RidesOutside(PackSpec pack, PackedItem item) =>
        item.Part is StudioPart.Panel or StudioPart.UprightSheet && item.Size is { } size && !pack.Bags.Any(bag => InsideOf(bag).Takes(size));

    private static CarriedItem StrappedOn(PackSpec pack, CarriedItem item) => item with
    {
        Size = null,
        Fragile = false,
        Bag = pack.Bags.MaxBy(bag => InsideOf(bag).Longest * InsideOf(bag).Middle)!.Name,
    };
}
