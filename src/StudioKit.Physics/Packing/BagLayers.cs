using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Packing;

/// <summary>Order of things in a bag.</summary>
public static class BagLayers
{
    /// <summary>Puts things in order from the bottom up.</summary>
    /// <param name="items">Things in one bag.</param>
    /// <returns>What is needed last at the bottom; among things needed together heavy ones low and fragile ones on top.</returns>
    /// <exception cref="ArgumentNullException">There are no items.</exception>
    [Source("CommonPractice", "heavy things low, fragile things high, first needed on top")]
    public static IReadOnlyList<CarriedItem> FromBottom(IEnumerable<CarriedItem> items)
    {
        ArgumentNullException.ThrowIfNull(items);
        return [.. items.OrderByDescending(item => item.NeededAt).ThenBy(item => item.Fragile).ThenByDescending(item => item.TotalMass).ThenBy(item => item.Name, StringComparer.Ordinal)];
    }
}
