using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Packing;

/// <summary>A change that makes the kit lighter, and what planning the changed kit gave; each is made on top of those before it.</summary>
/// <param name="Change">The change.</param>
/// <param name="Saved">What it takes off.</param>
/// <param name="Total">Everything together after it, bags included.</param>
/// <param name="Lost">What works no longer, each a set-up and a framing.</param>
/// <param name="MarginChange">By how much the smallest white margin changes; none where nothing white works.</param>
public sealed record LighterStep(LighterChange Change, Mass Saved, Mass Total, IReadOnlyList<string> Lost, Stops? MarginChange);
