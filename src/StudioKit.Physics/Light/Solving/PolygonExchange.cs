namespace StudioKit.Physics.Light.Solving;

/// <summary>Form factors between patches of any shape: Lambert's polygon sum, averaged over points of the sending patch.</summary>
internal static class PolygonExchange
{
    // Gauss points of order one to three on 0 to 1, and their weights.
    private static readonly double[][] Nodes = [[0.5], [0.2113248654051871, 0.7886751345948129], [0.1127016653792583, 0.5, 0.8872983346207417]];
    private static readonly double[][] Weights = [[1], [0.5, 0.5], [5.0 / 18, 8.0 / 18, 5.0 / 18]];

    /// <summary>Fills a row-major matrix with F_ij, the share of patch i's light that reaches patch j.</summary>
    /// <remarks>
    /// Each pair is worked out once, from the smaller patch, whose points see the other more nearly alike; the way back follows from
    /// reciprocity. Under a convex sheet over a flat ground nothing stands between two patches that face each other.
    /// </remarks>
    public static void Fill(Patch[] patches, double[] factors, int stride)
    {
        double[] areas = [.. patches.Select(patch => patch.Area)];
        ParallelWork.For(patches.Length, i =>
        {
            for (var j = i + 1; j < patches.Length; j++)
            {
                var (small, large) = areas[i] <= areas[j] ? (i, j) : (j, i);
                var factor = patches[i].Face == patches[j].Face ? 0 : Average(patches[small], patches[large], areas[large]);
                factors[(small * stride) + large] = factor;
                factors[(large * stride) + small] = factor * areas[small] / areas[large];
            }
        });
    }

    private static double Average(in Patch from, in Patch to, double area)
    {
        var order = Order(from.Centre.SquareTo(to.Centre) / area);
        var (nodes, weights, normal, sum) = (Nodes[order], Weights[order], from.Normal, 0.0);
        for (var i = 0; i < nodes.Length; i++)
        {
            for (var j = 0; j < nodes.Length; j++)
            {
                sum += weights[i] * weights[j] * PolygonFactor.From(from.At(nodes[i], nodes[j]), normal, to);
            }
        }

        return sum;
    }

    // One point serves beyond five patch sizes (error about a hundredth of a small factor), two a side beyond two.
    private static int Order(double squareOverArea) => squareOverArea switch { > 25 => 0, > 4 => 1, _ => 2 };
}
