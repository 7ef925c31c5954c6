using UnitsNet;

namespace StudioKit.Physics.Light.Placements;

/// <summary>Every combination of a case's lists, always in the same order.</summary>
internal static class PlacementGrid
{
    public static IReadOnlyList<PlacementCandidate> Candidates(PlacementCase search, Func<Length, Position> target) =>
    [
        .. from height in search.PanelHeights
           from surround in search.Surrounds
           from flash in search.Flashes
           from count in search.Counts
           from isAimed in search.Aims
           from distance in search.Distances
           from back in search.OffsetsBack
           from right in search.OffsetsRight
           where distance < height
           // Two flashes on one spot are one; a mirrored pair is the same pair.
           where count == 1 || right > Length.Zero
           select new PlacementCandidate(flash, count, surround, height, distance, right, back, isAimed ? target(height) : null),
    ];
}
