using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Packing;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>What to leave at home to reach the kit's target mass.</summary>
internal static class HomeChoice
{
    /// <summary>The choice that loses the fewest set-ups at framings; none where the kit has no target, or is under it.</summary>
    /// <remarks>Each exposure that works counts one; things that no exposure needs and that the kit calls dispensable count nothing.</remarks>
    public static LeaveAtHomePlan? Of(KitSpec kit, IReadOnlyList<PackedItem> items, Mass total, IReadOnlyList<ExposurePlan> exposures)
    {
        if (kit.Pack.TargetMass is not { } target || total <= target)
        {
            return null;
        }

        var bags = Mass.FromGrams(kit.Pack.Bags.Sum(bag => bag.Mass.Grams));
        var rest = target > bags ? target - bags : Mass.Zero;
        var choice = LeaveAtHome.Choose(PackCases.Carried(items), [.. exposures.Where(exposure => exposure.Works).Select(exposure => Capability(exposure, items))], rest);
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

    /// <summary>Things beside the camera that an exposure cannot do without.</summary>
    public static IReadOnlyList<string> Needs(ExposurePlan exposure, IReadOnlyList<PackedItem> items) =>
    [
        exposure.Framing.Lens,
        .. exposure.Framing.Accessories,
        .. exposure.Lights.Select(light => light.Flash),
        .. items.Where(item => item is { CellsOf: not null, InFlash: false } && exposure.Lights.Any(light => light.Flash == item.CellsOf)).Select(item => item.Name),
        .. exposure.Lights.Select(light => light.Modifier).OfType<string>(),
        .. exposure.Filter is { } filter ? new[] { filter } : [],
        .. exposure.Kind == SetUpKind.WhiteBackground ? items.Where(item => item.Part is not null).Select(item => item.Name) : [],
    ];

    private static Capability Capability(ExposurePlan exposure, IReadOnlyList<PackedItem> items) =>
        new($"{exposure.SetUp}, {exposure.Framing.Name}", 1, [.. Needs(exposure, items).Distinct(StringComparer.Ordinal)]);
}
