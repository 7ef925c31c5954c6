using StudioKit.Physics.Structure.Frames;

namespace StudioKit.Sheets.Building.Solids;

/// <summary>Orders parts so that each is drawn after all that it hides.</summary>
internal static class FarFirst
{
    // Parts that touch count as apart [m].
    private const double Touch = 1e-4;

    /// <summary>The parts, far ones first.</summary>
    /// <remarks>
    /// Of two boxes that are apart along an axis, none behind can hide the other. Where several axes disagree neither hides the other. Rings of parts, each before the next,
    /// would need parts that are bent; should one arise, the farthest of it comes first.
    /// </remarks>
    public static List<Solid> Order(IReadOnlyList<Solid> parts, Camera camera)
    {
        var behind = Enumerable.Range(0, parts.Count).Select(_ => new List<int>()).ToArray();
        var waiting = new int[parts.Count];
        var places = parts.Select(part => Drawings.Bounds.Of([.. Corners(part).Select(camera.At)])).ToArray();
        for (var i = 0; i < parts.Count; i++)
        {
            for (var k = i + 1; k < parts.Count; k++)
            {
                var order = Meets(places[i], places[k]) ? Compare(parts[i], parts[k], camera.Towards) : 0;
                if (order != 0)
                {
                    var (far, near) = order < 0 ? (i, k) : (k, i);
                    behind[far].Add(near);
                    waiting[near]++;
                }
            }
        }

        return Freed(parts, behind, waiting, camera);
    }

    private static List<Solid> Freed(IReadOnlyList<Solid> parts, List<int>[] behind, int[] waiting, Camera camera)
    {
        var left = Enumerable.Range(0, parts.Count).OrderBy(i => Depth(parts[i], camera.Towards)).ThenBy(i => i).ToList();
        var ordered = new List<Solid>(parts.Count);
        while (left.Count > 0)
        {
            var place = Math.Max(0, left.FindIndex(i => waiting[i] == 0));
            var next = left[place];
            left.RemoveAt(place);
            ordered.Add(parts[next]);
            foreach (var near in behind[next])
            {
                waiting[near]--;
            }
        }

        return ordered;
    }

    // Less than nought where the first lies behind.
    private static int Compare(Solid one, Solid other, FramePoint towards)
    {
        var order = 0;
        foreach (var (gap, back, way) in new[]
        {
            (one.Low.Right - other.High.Right, other.Low.Right - one.High.Right, towards.Right),
            (one.Low.Back - other.High.Back, other.Low.Back - one.High.Back, towards.Back),
            (one.Low.Up - other.High.Up, other.Low.Up - one.High.Up, towards.Up),
        })
        {
            var axis = gap > -Touch ? Math.Sign(way) : back > -Touch ? -Math.Sign(way) : 0;
            if (axis * order < 0)
            {
                return 0;
            }

            order = axis == 0 ? order : axis;
        }

        return order;
    }

    private static double Depth(Solid part, FramePoint towards) => (part.Low + part.High).Dot(towards);

    private static bool Meets(Drawings.Bounds a, Drawings.Bounds b) => a.Left < b.Right && b.Left < a.Right && a.Top < b.Bottom && b.Top < a.Bottom;

    private static IEnumerable<FramePoint> Corners(Solid part)
    {
        foreach (var right in new[] { part.Low.Right, part.High.Right })
        {
            foreach (var back in new[] { part.Low.Back, part.High.Back })
            {
                yield return new FramePoint(right, back, part.Low.Up);
                yield return new FramePoint(right, back, part.High.Up);
            }
        }
    }
}
