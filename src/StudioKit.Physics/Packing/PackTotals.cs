using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>What people carry.</summary>
public static class PackTotals
{
    /// <summary>Load of every person who carries a bag.</summary>
    /// <param name="pack">People and their bags.</param>
    /// <param name="bags">What the bags hold.</param>
    /// <returns>One entry a person, in the order given; bags without a known carrier are left out.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A body mass is not above zero.</exception>
    [Source("Simpson2011", "load as a share of body mass")]
    public static IReadOnlyList<PersonLoad> People(PackCase pack, IReadOnlyList<PackedBag> bags)
    {
        ArgumentNullException.ThrowIfNull(pack);
        ArgumentNullException.ThrowIfNull(bags);
        return [.. pack.Carriers.Select(person => Of(person, pack, bags)).Where(load => load.Bags.Count > 0)];
    }

    private static PersonLoad Of(Carrier person, PackCase pack, IReadOnlyList<PackedBag> bags)
    {
        var names = pack.Bags.Where(bag => bag.Carrier == person.Name).Select(bag => bag.Name).ToList();
        var mass = bags.Where(bag => names.Contains(bag.Bag)).Sum(bag => bag.Mass.Kilograms);
        var share = BodyShare.Of(mass, person.BodyMass.Kilograms);
        return new PersonLoad(person.Name, names, Mass.FromKilograms(mass), share, BodyShare.BandOf(share));
    }
}
