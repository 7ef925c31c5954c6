namespace StudioKit.Physics.Light.Solving;

/// <summary>Straight light on every patch of a box, averaged over nine Gauss points.</summary>
internal sealed class PatchSamples
{
    private const int PointsPerPatch = 9;
    private static readonly double[] Nodes = [0.1127016653792583, 0.5, 0.8872983346207417];
    private static readonly double[] Weights = [5.0 / 18, 8.0 / 18, 5.0 / 18];

    private readonly int _count;
    private readonly ReceiverSet _points;

    public PatchSamples(Patch[] patches)
    {
        _count = patches.Length;
        _points = new ReceiverSet([.. patches.SelectMany(Points)]);
    }

    /// <summary>Mean luminous exposure of every patch by one flash [lx·s].</summary>
    public double[] Exposures(DirectLight flash)
    {
        var arriving = new double[_points.PaddedCount];
        flash.AddTo(_points, arriving);
        return [.. Enumerable.Range(0, _count).Select(i => Mean(arriving.AsSpan(i * PointsPerPatch, PointsPerPatch)))];
    }

    private static IEnumerable<(Position Place, Direction Normal)> Points(Patch patch)
    {
        var normal = patch.Normal;
        return from t in Nodes from s in Nodes select (patch.At(s, t), normal);
    }

    private static double Mean(ReadOnlySpan<double> points)
    {
        var sum = 0.0;
        for (var i = 0; i < PointsPerPatch; i++)
        {
            sum += Weights[i / Weights.Length] * Weights[i % Weights.Length] * points[i];
        }

        return sum;
    }
}
