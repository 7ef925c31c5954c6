using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Physics.Light.Placements;

/// <summary>A candidate with what it gives.</summary>
/// <param name="Candidate">Where the flashes stand, and what is chosen along with it.</param>
/// <param name="Framings">What each framing gets; empty where the geometry is impossible.</param>
/// <param name="MeanEnergy">Energy of all flashes at work, averaged over the framings.</param>
/// <param name="Spread">Unevenness in the worst framing.</param>
/// <param name="Limit">What keeps it from serving every framing.</param>
public sealed record Placement(
    PlacementCandidate Candidate, IReadOnlyList<FramingLight> Framings, Energy MeanEnergy, Stops Spread, PlacementLimit Limit);
