using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>Chooses what stays at home so that the rest is light enough and least is lost.</summary>
public static class LeaveAtHome
{
    private const int Nodes = 200_000;

    /// <summary>Finds the things whose absence loses least.</summary>
    /// <param name="items">Things to carry; essential ones never stay.</param>
    /// <param name="capabilities">Framings and set-ups with the things they need; each is lost whole with the first of them.</param>
    /// <param name="target">Mass that the things may have at most; ≥ 0.</param>
    /// <returns>What to leave, what is lost, and whether that is proven least.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The target or a loss is negative, or not finite.</exception>
    /// <remarks>
    /// A covering knapsack: least Σ losses with Σ masses left ≥ excess, by branch and bound. Of equal losses the one that leaves the
    /// least mass wins. The bound shares each capability's loss among the things it needs and covers the excess by parts of things.
    /// </remarks>
    [Source("MartelloToth1990", "0-1 knapsack, branch and bound with the linear bound")]
    public static LeaveAtHomeResult Choose(
        IReadOnlyList<CarriedItem> items, IReadOnlyList<Capability> capabilities, Mass target)
    {
        ArgumentNullException.ThrowIfNull(items);
        ArgumentNullException.ThrowIfNull(capabilities);
        var total = items.Sum(item => Guard.NonNegative(item.TotalMass.Grams, nameof(items)));
        var excess = total - Guard.NonNegative(target.Grams, nameof(target));
        var search = new LeaveSearch(items, capabilities, excess, Nodes).Run();
        var left = search.Best.Select(item => items[item].Name).ToList();
        var lost = capabilities.Where(capability => capability.Needs.Any(left.Contains)).ToList();
        var mass = total - search.Best.Sum(item => items[item].TotalMass.Grams);

        return new LeaveAtHomeResult(
            left,
            [.. lost.Select(capability => capability.Name)],
            search.Best.Sum(item => items[item].Loss) + lost.Sum(capability => capability.Loss),
            Mass.FromGrams(mass),
            mass <= target.Grams + LeaveSearch.GramSlack,
            search.Proven);
    }
}
