using StudioKit.Physics.Light;

namespace StudioKit.Planning.Studio.Panels;

/// <summary>The outline around scattered places of the panel.</summary>
internal static class PlaneHull
{
    /// <summary>Corners of the smallest convex outline, in order; the places themselves where there are fewer than three.</summary>
    public static IReadOnlyList<PanelPlace> Around(IEnumerable<PanelPlace> places)
    {
        var sorted = places.Select(place => (X: place.Across.Meters, Y: place.AlongSheet.Meters, Place: place)).ToArray();
        Array.Sort(sorted, static (one, other) => one.X.CompareTo(other.X) is var across && across != 0 ? across : one.Y.CompareTo(other.Y));
        return sorted.Length < 3
            ? [.. sorted.Select(corner => corner.Place)]
            : [.. Chain(sorted), .. Chain(sorted.Reverse())];
    }

    // One side of the outline, its last corner left to the other side.
    private static IEnumerable<PanelPlace> Chain(IEnumerable<(double X, double Y, PanelPlace Place)> places)
    {
        List<(double X, double Y, PanelPlace Place)> chain = [];
        foreach (var place in places)
        {
            while (chain.Count > 1 && Turn(chain[^2], chain[^1], place) <= 0)
            {
                chain.RemoveAt(chain.Count - 1);
            }

            chain.Add(place);
        }

        return chain[..^1].Select(corner => corner.Place);
    }

    private static double Turn((double X, double Y, PanelPlace) from, (double X, double Y, PanelPlace) over, (double X, double Y, PanelPlace) to) =>
        ((over.X - from.X) * (to.Y - from.Y)) - ((over.Y - from.Y) * (to.X - from.X));
}
