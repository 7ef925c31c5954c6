using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>What one bag holds.</summary>
/// <param name="Bag">Name of the bag.</param>
/// <param name="Items">Names of the things in it, from the bottom up.</param>
/// <param name="StrappedOutside">Those of them that are strapped outside.</param>
/// <param name="Mass">Mass with the empty bag.</param>
/// <param name="VolumeShare">Share of the usable volume that is filled, things without a size left out [1].</param>
public sealed record PackedBag(
    string Bag, IReadOnlyList<string> Items, IReadOnlyList<string> StrappedOutside, Mass Mass, double VolumeShare);
