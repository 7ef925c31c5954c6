using UnitsNet;

namespace StudioKit.Physics.Packing;

/// <summary>What one person carries.</summary>
/// <param name="Person">Name of the person.</param>
/// <param name="Bags">Names of the bags.</param>
/// <param name="Mass">Mass of all of them.</param>
/// <param name="Share">Share of body mass [1].</param>
/// <param name="Band">How the load bears on the person.</param>
public sealed record PersonLoad(string Person, IReadOnlyList<string> Bags, Mass Mass, double Share, LoadBand Band);
