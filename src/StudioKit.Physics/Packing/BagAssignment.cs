using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>Shares things out to bags so that everybody's load is as even against their limit as it can be.</summary>
public static class BagAssignment
{
    // About a second; the small packs of a field day are proven in far fewer.
    private const int Nodes = 400_000;

    /// <summary>Finds the assignment whose most used limit is used least.</summary>
    /// <param name="pack">Things, bags and people.</param>
    /// <returns>Bags, people, and whether the assignment is proven optimal.</returns>
    /// <exception cref="ArgumentNullException">There is no case.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside the range that the record gives.</exception>
    /// <remarks>
    /// Least over all assignments of the greatest of person's mass / (share × body mass) and bag's mass / its highest load, by branch
    /// and bound with the even split as bound; bags over their usable volume come last. Things of one kind stay together. The
    /// same pack gives the same answer everywhere.
    /// </remarks>
    [Source("MartelloToth1990", "branch and bound for multiple knapsacks")]
    public static BagAssignmentResult Solve(PackCase pack)
    {
        var model = new BagModel(pack);
        var search = new BagSearch(model, Nodes).Run();
        var bags = pack.Bags.Select((bag, i) => Load(pack, model, search.Best, i)).ToList();
        var people = PackTotals.People(pack, bags);

        return new BagAssignmentResult(bags, people, search.BestUse, search.Proven);
    }

    private static PackedBag Load(PackCase pack, BagModel model, int[] bagOf, int bag)
    {
        var inside = Enumerable.Range(0, bagOf.Length).Where(item => bagOf[item] == bag).ToList();
        var outside = inside.Where(item => model.Outside(item, bag)).ToList();
        return new PackedBag(
            pack.Bags[bag].Name,
            [.. BagLayers.FromBottom(inside.Select(item => pack.Items[item])).Select(item => item.Name)],
            [.. outside.Select(item => pack.Items[item].Name)],
            Mass.FromGrams(model.Empty[bag] + inside.Sum(item => model.Grams[item])),
            inside.Except(outside).Sum(item => model.Liters[item]) / model.Usable[bag]);
    }
}
