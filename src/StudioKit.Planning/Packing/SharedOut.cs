using StudioKit.Kits.Carrying;
using StudioKit.Physics;

namespace StudioKit.Planning.Packing;

/// <summary>What is shared out to which bags.</summary>
/// <param name="Pack">Bags, people, and how full and how heavy.</param>
/// <param name="Items">The things.</param>
internal sealed record SharedOut(PackSpec Pack, ValueList<PackedItem> Items);
