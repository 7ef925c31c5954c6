using StudioKit.Physics.Packing;

namespace StudioKit.Planning.Packing;

/// <summary>What to mind of a long thing on its bag.</summary>
/// <param name="Kind">What to mind.</param>
/// <param name="Bag">Name of the bag.</param>
/// <param name="Inside">Inside of the bag.</param>
public sealed record LongPieceCaveat(LongPieceCaveatKind Kind, string Bag, BoxSize Inside)
{
    /// <summary>Size of the thing; none where its length says it.</summary>
    public BoxSize? Size { get; init; }
}
