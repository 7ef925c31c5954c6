using StudioKit.Physics.Light.Obstacles;

namespace StudioKit.Physics.Light.Solving;

/// <summary>The rays that decide which pairs of a box an obstacle stands between: one for each pair of patches, and of a point and a patch.</summary>
internal sealed class ShadowRays
{
    // Rays between varying quarter points: a thin pipe then takes its share of the light on the whole, pair by pair at random.
    private static readonly (double S, double T)[] Quarters = [(0.25, 0.25), (0.75, 0.75), (0.75, 0.25), (0.25, 0.75)];

    private readonly Position[] _quarters;
    private readonly Position[] _points;
    private readonly int _senders;

    public ShadowRays(PatchMesh mesh, ReceiverSet points)
    {
        _quarters = [.. mesh.Patches.SelectMany(patch => Quarters.Select(quarter => patch.At(quarter.S, quarter.T)))];
        _points = [.. Enumerable.Range(0, points.Count).Select(points.Place)];
        _senders = mesh.SenderCount;
    }

    /// <summary>All pairs that an obstacle stands between; it depends on no other obstacle.</summary>
    public ShadowSet Of(Obstacle obstacle) => new([.. BetweenPatches(obstacle)], [.. FromPoints(obstacle)]);

    // The same ray serves both ways, so that the exchange stays reciprocal.
    private List<int> BetweenPatches(Obstacle obstacle)
    {
        var (count, blocked) = (_quarters.Length / 4, new List<int>());
        var stride = VectorMath.Padded(count);
        for (var i = 0; i < count; i++)
        {
            for (var j = i + 1; j < count; j++)
            {
                if (obstacle.Blocks(_quarters[(4 * i) + ((i + j) & 3)], _quarters[(4 * j) + ((i + (3 * j)) & 3)]))
                {
                    blocked.Add((i * stride) + j);
                    blocked.Add((j * stride) + i);
                }
            }
        }

        return blocked;
    }

    private List<int> FromPoints(Obstacle obstacle)
    {
        var (stride, blocked) = (VectorMath.Padded(_senders), new List<int>());
        for (var i = 0; i < _points.Length; i++)
        {
            for (var j = 0; j < _senders; j++)
            {
                if (obstacle.Blocks(_points[i], _quarters[(4 * j) + ((i + j) & 3)]))
                {
                    blocked.Add((i * stride) + j);
                }
            }
        }

        return blocked;
    }
}
