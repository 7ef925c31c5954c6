using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>Where a long thing goes and how long it could be.</summary>
/// <param name="Placement">Where it goes.</param>
/// <param name="LongestInside">Longest of its thickness that goes inside.</param>
/// <param name="Caveats">What to mind.</param>
public sealed record LongItemResult(LongItemPlacement Placement, Length LongestInside, IReadOnlyList<string> Caveats);
