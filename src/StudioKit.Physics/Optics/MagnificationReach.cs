using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>How a wanted magnification can be reached with a lens and the accessories on hand.</summary>
/// <param name="Wanted">The magnification asked for.</param>
/// <param name="Covering">Combinations that reach it, the simplest first; empty when none does.</param>
/// <param name="All">Every combination on hand, the simplest first.</param>
/// <param name="LeastExtension">Least extension by tubes alone that would reach it, with the lens at its closest focus.</param>
/// <param name="MostExtension">Most extension by tubes alone with which it is still reached, the lens at infinity focus.</param>
/// <param name="Limit">What keeps it out of reach; none when a combination reaches it.</param>
public sealed record MagnificationReach(
    Magnification Wanted,
    IReadOnlyList<AccessoryCombination> Covering,
    IReadOnlyList<AccessoryCombination> All,
    Length LeastExtension,
    Length MostExtension,
    ReachLimit? Limit);
