using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>Advice on a pack.</summary>
internal static class PackNotes
{
    // Cabin bag that a trade body advises, wheels and handles included; from memory, carriers differ.
    private static readonly BoxSize CabinBag = new(Length.FromMillimeters(560), Length.FromMillimeters(450), Length.FromMillimeters(250));

    /// <summary>Every note, one sentence or two each.</summary>
    public static IEnumerable<string> Of(KitSpec kit, PackPlan pack, IReadOnlyList<GearUse> uses) =>
        Masses(pack).Concat(Places(kit, pack)).Concat(Dispensable(kit, pack, uses)).Concat(Missing(kit)).Concat(Air(kit, pack));

    private static IEnumerable<string> Masses(PackPlan pack)
    {
        var assumed = pack.Items.Where(item => item.Origin == MassOrigin.Assumed).Select(item => item.Name).ToList();
        if (assumed.Count > 0)
        {
            yield return $"Weigh these, their mass is assumed: {string.Join(", ", assumed)}.";
        }
    }

    private static IEnumerable<string> Places(KitSpec kit, PackPlan pack)
    {
        if (pack.Bags.Count == 0)
        {
            yield break;
        }

        yield return "Heavy things low and close to the back, fragile ones high and padded, what is needed first on top.";
        var outside = pack.Items.Where(item => item.Outside).Select(item => $"{item.Name} on {item.Bag}").ToList();
        if (outside.Count > 0)
        {
            yield return $"Strapped outside, in a sleeve: {string.Join("; ", outside)}.";
        }

        if (!pack.ProvenMostEven)
        {
            yield return "The load is shared out well, but a more even way may exist; the search was cut short.";
        }

        if (pack.Bags.Any(bag => bag.Carrier is null || kit.Pack.People.All(person => person.Name != bag.Carrier)))
        {
            yield return "A bag without a carrier of known body mass counts as carried by somebody of 70 kg.";
        }

        var sized = pack.Items.Count(item => item.Size is null);
        yield return FormattableString.Invariant(
            $"Volume counts {100 * kit.Pack.PackingFactor:0} % of a bag as usable; {sized} lines have no size and are left out of it, {pack.Items.Count(item => item.SizeAssumed)} have a usual one.");
    }

    private static IEnumerable<string> Dispensable(KitSpec kit, PackPlan pack, IReadOnlyList<GearUse> uses)
    {
        var needed = uses.SelectMany(use => use.Needs(pack.Items)).ToHashSet(StringComparer.Ordinal);
        var gear = kit.Lenses.Select(lens => lens.Name)
            .Concat(kit.Accessories.ExtensionTubes.Select(tube => tube.Name))
            .Concat(kit.Accessories.CloseUpLenses.Select(lens => lens.Name))
            .Concat(kit.Accessories.Teleconverters.Select(converter => converter.Name))
            .Concat(kit.Accessories.Filters.Select(filter => filter.Name))
            .Concat(kit.Flashes.Select(flash => flash.Name))
            .Concat(kit.Modifiers.Select(modifier => modifier.Name))
            .Concat(kit.Holders.Where(holder => holder.IsCarried).Select(holder => holder.Name))
            .Concat(kit.Triggers.Where(trigger => trigger.IsCarried).Select(trigger => trigger.Name))
            .Concat(kit.Shelters.Select(shelter => shelter.Name));
        var idle = gear.Where(name => !needed.Contains(name)).ToList();
        if (idle.Count > 0 && uses.Count > 0)
        {
            yield return $"No set-up needs these at any framing: {string.Join(", ", idle)}.";
        }
    }

    private static IEnumerable<string> Missing(KitSpec kit)
    {
        if (kit.Pack.Items.All(item => item.Kind != PackItemKind.FirstAid))
        {
            yield return "No first aid is on the list ('kind: first-aid').";
        }

        if (kit.Pack.Items.All(item => item.Kind != PackItemKind.Weather))
        {
            yield return "No weather layer is on the list ('kind: weather'): wind, rain and sun come as they like.";
        }
    }

    private static IEnumerable<string> Air(KitSpec kit, PackPlan pack)
    {
        foreach (var rule in pack.Cells.GroupBy(stock => stock.Air.Rule, StringComparer.Ordinal))
        {
            yield return $"By air, {string.Join(", ", rule.Select(stock => stock.Cell).Distinct(StringComparer.Ordinal))}: {rule.Key} ({Bibliography.Entries[rule.First().Air.SourceKey].Citation}; {rule.First().Air.AsOf})";
        }

        var large = kit.Pack.Bags.Where(bag => !CabinBag.Takes(PackCases.InsideOf(bag))).Select(bag => bag.Name).ToList();
        if (large.Count > 0)
        {
            yield return $"Larger than a usual cabin bag of 56 × 45 × 25 cm (from memory): {string.Join(", ", large)}.";
        }

        if (pack.Cells.Count > 0 || large.Count > 0)
        {
            yield return AirCellRule.Guidance;
        }
    }
}
