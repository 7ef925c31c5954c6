namespace StudioKit.Physics.Light.Solving;

/// <summary>How far apart the edges of two rows of cells are, each length kept once: most pairs of edges share theirs with others.</summary>
internal sealed class EdgeSteps
{
    // Lengths nearer than this are one; far under the size of a patch, far over rounding [m].
    private const double Same = 1e-9;

    private readonly int[] _places;
    private readonly int _others;

    public EdgeSteps(double[] edges, double[] others)
    {
        _others = others.Length;
        _places = new int[edges.Length * others.Length];
        var (known, lengths) = (new Dictionary<long, int>(), new List<double>());
        for (var i = 0; i < _places.Length; i++)
        {
            var length = Math.Abs(edges[i / _others] - others[i % _others]);
            var key = (long)Math.Round(length / Same);
            if (!known.TryGetValue(key, out _places[i]))
            {
                known[key] = _places[i] = lengths.Count;
                lengths.Add(length);
            }
        }

        Lengths = [.. lengths];
    }

    /// <summary>Every length that occurs [m].</summary>
    public double[] Lengths { get; }

    /// <summary>The steps between the edges of two cells.</summary>
    public CellSteps Between(int cell, int other)
    {
        var (low, high) = ((cell * _others) + other, ((cell + 1) * _others) + other);
        return new CellSteps(_places[high], _places[low], _places[high + 1], _places[low + 1]);
    }
}
