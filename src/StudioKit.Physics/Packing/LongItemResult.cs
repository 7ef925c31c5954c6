using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>Where a long thing goes and how long it could be.</summary>
/// <param name="Placement">Where it goes.</param>
/// <param name="LongestInside">Longest of its thickness that goes inside.</param>
/// <param name="SticksOut">Whether it is longer than the bag by more than a tenth, and so catches on things.</param>
public sealed record LongItemResult(LongItemPlacement Placement, Length LongestInside, bool SticksOut);
