using StudioKit.Kits;
using StudioKit.Kits.Carrying;
using StudioKit.Physics.Packing;
using StudioKit.Physics.Sources;

namespace StudioKit.Planning.Packing;

/// <summary>Advice on a pack.</summary>
internal static class PackNotes
{
    /// <summary>Every note, one sentence or two each.</summary>
    public static IEnumerable<PackNote> Of(KitSpec kit, PackPlan pack, IReadOnlyList<GearUse> uses) =>
        Masses(pack).Concat(Places(kit, pack)).Concat(Dispensable(kit, pack, uses).Concat(Missing(kit)).Select(Sentence)).Concat(Air(kit, pack));

    private static PackNote Sentence(string text) => new(PackNoteKind.Sentence, text);

    private static IEnumerable<PackNote> Masses(PackPlan pack)
    {
        var assumed = pack.Items.Where(item => item.Origin == MassOrigin.Assumed).ToList();
        if (assumed.Count > 0)
        {
            yield return new PackNote(PackNoteKind.Weigh, "") { Items = assumed };
        }
    }

    private static IEnumerable<PackNote> Places(KitSpec kit, PackPlan pack)
    {
        if (pack.Bags.Count == 0)
        {
            yield break;
        }

        yield return Sentence("Heavy things low and close to the back, fragile ones high and padded, what is needed first on top.");
        var outside = pack.Items.Where(item => item.Outside).ToList();
        if (outside.Count > 0)
        {
            yield return new PackNote(PackNoteKind.Outside, "") { Items = outside };
        }

        if (!pack.ProvenMostEven)
        {
            yield return Sentence("The load is shared out well, but a more even way may exist; the search was cut short.");
        }

        if (pack.Bags.Any(bag => bag.Carrier is null || kit.Pack.People.All(person => person.Name != bag.Carrier)))
        {
            yield return new PackNote(PackNoteKind.NoBodyMass, "");
        }

        var sized = pack.Items.Count(item => item.Size is null);
        yield return Sentence(FormattableString.Invariant(
            $"Volume counts {100 * kit.Pack.PackingFactor:0} % of a bag as usable; {sized} lines have no size and are left out of it, {pack.Items.Count(item => item.SizeAssumed)} have a usual one."));
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

    private static IEnumerable<PackNote> Air(KitSpec kit, PackPlan pack)
    {
        foreach (var rule in pack.Cells.GroupBy(stock => stock.Air.Rule, StringComparer.Ordinal))
        {
            yield return Sentence($"By air, {string.Join(", ", rule.Select(stock => stock.Cell).Distinct(StringComparer.Ordinal))}: {rule.Key} ({Bibliography.Entries[rule.First().Air.SourceKey].Citation}; {rule.First().Air.AsOf})");
        }

        var large = kit.Pack.Bags.Where(bag => !PackNote.CabinBag.Takes(PackCases.InsideOf(bag))).Select(bag => bag.Name).ToList();
        if (large.Count > 0)
        {
            yield return new PackNote(PackNoteKind.LargeBags, "") { Bags = large };
        }

        if (pack.Cells.Count > 0 || large.Count > 0)
        {
            yield return Sentence(AirCellRule.Guidance);
        }
    }
}
