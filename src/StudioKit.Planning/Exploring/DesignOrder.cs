using StudioKit.Kits;

namespace StudioKit.Planning.Exploring;

/// <summary>The order in which all designs are tried: what changes most of a plan changes seldom, so that what was worked out serves again.</summary>
internal static class DesignOrder
{
    /// <summary>All designs of a space.</summary>
    public static IEnumerable<DesignCode> All(DesignSpace space)
    {
        var seldom = space.Choices.Select((choice, place) => (Place: place, Weight: WeightOf(space, place))).OrderByDescending(choice => choice.Weight).Select(choice => choice.Place).ToList();
        return From(space, seldom, 0, space.Own);
    }

    private static IEnumerable<DesignCode> From(DesignSpace space, List<int> order, int depth, DesignCode design) => depth == order.Count
        ? [design]
        : Enumerable.Range(0, space.Choices[order[depth]].Options.Count).SelectMany(option => From(space, order, depth + 1, design.With(order[depth], option)));

    // How early in a plan the choice is read.
    private static int WeightOf(DesignSpace space, int choice)
    {
        var own = space.AsWritten.Kit!;
        var others = Enumerable.Range(0, space.Choices[choice].Options.Count).Select(option => space.Read(space.Own.With(choice, option))?.Kit).OfType<KitSpec>().ToList();
        return others.Exists(kit => KitSlice.ForFramings(kit) != KitSlice.ForFramings(own)) ? 4
            : others.Exists(kit => KitSlice.ForPanel(kit) != KitSlice.ForPanel(own)) ? 3
            : others.Exists(kit => KitSlice.ForFrame(kit) != KitSlice.ForFrame(own)) ? 2
            : others.Exists(kit => KitSlice.ForLight(kit) != KitSlice.ForLight(own)) ? 1
            : 0;
    }
}
