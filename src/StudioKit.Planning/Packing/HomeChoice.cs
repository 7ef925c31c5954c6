using StudioKit.Kits;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>What to leave at home to reach the kit's target mass.</summary>
internal static class HomeChoice
{
    /// <summary>The choice that loses the fewest set-ups at framings; none where the kit has no target, or is under it.</summary>
    /// <remarks>Each exposure that works counts one; things that no exposure needs and that the kit calls dispensable count nothing.</remarks>
    public static LeaveAtHomePlan? Of(KitSpec kit, IReadOnlyList<PackedItem> items, Mass total, IReadOnlyList<GearUse> uses)
    {
        if (kit.Pack.TargetMass is not { } target || total <= target)
        {
            return null;
        }

        var bags = Mass.FromGrams(kit.Pack.Bags.Sum(bag => bag.Mass.Grams));
        var rest = target > bags ? target - bags : Mass.Zero;
        var choice = LeaveAtHome.Choose(PackCases.Carried(items), [.. uses.Where(use => use.Works).Select(use => Capability(use, items))], rest);
        return new LeaveAtHomePlan
        {
            Target = target,
            Left = [.. items.Where(item => choice.Left.Contains(item.InFlash ? item.CellsOf! : item.Name)).Select(item => item.Name)],
            Lost = choice.LostCapabilities,
            Mass = choice.Mass + bags,
            Reached = choice.Reached && target >= bags,
            ProvenLeast = choice.ProvenOptimal,
        };
    }

    private static Capability Capability(GearUse use, IReadOnlyList<PackedItem> items) => new($"{use.SetUp}, {use.Framing}", 1, [.. use.Needs(items)]);
}
