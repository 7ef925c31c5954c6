using StudioKit.Physics.Light;

namespace StudioKit.Planning.Studio.Panels;

/// <summary>The outline around scattered places of the panel.</summary>
internal static class PlaneHull
{
    /// <summary>Corners of the smallest convex outline, in order; the places themselves where there are fewer than three.</summary>
    public static IReadOnlyList<PanelPlace> Around(IEnumerable<PanelPlace> places)
    {
        var sorted = places.OrderBy(place => place.Across).ThenBy(place => place.AlongSheet).ToList();
        return sorted.Count < 3 ? sorted : [.. Chain(sorted), .. Chain(Enumerable.Reverse(sorted))];
    }

    // One side of the outline, its last corner left to the other side.
    private static List<PanelPlace> Chain(IEnumerable<PanelPlace> places)
    {
        List<PanelPlace> chain = [];
        foreach (var place in places)
        {
            while (chain.Count > 1 && Turn(chain[^2], chain[^1], place) <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(place);
        }

        return chain[..^1];
    }

    private static double Turn(PanelPlace from, PanelPlace over, PanelPlace to) =>
        ((over.Across - from.Across).Meters * (to.AlongSheet - from.AlongSheet).Meters)
        - ((over.AlongSheet - from.AlongSheet).Meters * (to.Across - from.Across).Meters);
}
