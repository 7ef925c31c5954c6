using StudioKit.Kits;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>What to leave at home to reach the kit's target mass.</summary>
internal static class HomeChoice
{
    /// <summary>The choice that loses the fewest set-ups at framings; none where the kit has no target, or is under it.</summary>
    /// <remarks>Each exposure that works counts one, on the panel more than all others; things that no exposure needs and that the kit calls dispensable count nothing.</remarks>
    public static LeaveAtHomePlan? Of(KitSpec kit, IReadOnlyList<PackedItem> items, Mass total, IReadOnlyList<GearUse> uses)
    {
        if (kit.Pack.TargetMass is not { } target || total <= target)
        {
            return null;
        }

        var bags = Mass.FromGrams(kit.Pack.Bags.Sum(bag => bag.Mass.Grams));
        var rest = target > bags ? target - bags : Mass.Zero;
        var choice = LeaveAtHome.Choose(PackCases.Carried(items), [.. Capabilities([.. uses.Where(use => use.Works)], items)], rest);
        List<PackedItem> left = [.. items.Where(item => choice.Left.Contains(item.InFlash ? item.CellsOf! : item.Name))];
        return new LeaveAtHomePlan
        {
            Target = target,
            Left = [.. left.Select(item => item.Name)],
            LeftItems = left,
            Lost = choice.LostCapabilities,
            Mass = choice.Mass + bags,
            Reached = choice.Reached && target >= bags,
            ProvenLeast = choice.ProvenOptimal,
        };
    }

    // What the studio is built for goes last: one exposure on the panel counts for more than all others together.
    private static IEnumerable<Capability> Capabilities(IReadOnlyList<GearUse> uses, IReadOnlyList<PackedItem> items)
    {
        var others = uses.Count(use => !use.OnPanel);
        return uses.Select(use => new Capability($"{use.SetUp}, {use.Framing}", use.OnPanel ? 1 + others : 1, [.. use.Needs(items)]));
    }
}
