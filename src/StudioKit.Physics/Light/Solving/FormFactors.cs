using StudioKit.Physics.Light.Obstacles;

namespace StudioKit.Physics.Light.Solving;

/// <summary>The two matrices of a box: between patches, and from panel points to patches; closed forms where all is flat.</summary>
internal static class FormFactors
{
    // Rays between varying quarter points: a thin pipe then takes its share of the light on the whole, pair by pair at random.
    private static readonly (double S, double T)[] Quarters = [(0.25, 0.25), (0.75, 0.75), (0.75, 0.25), (0.25, 0.75)];

    /// <summary>Row-major F_ij between patches, rows padded to whole vectors.</summary>
    public static double[] Between(PatchMesh mesh, LightPanel panel, IReadOnlyList<Obstacle> shadows)
    {
        var patches = mesh.Patches;
        var stride = VectorMath.Padded(patches.Length);
        var factors = new double[patches.Length * stride];
        if (mesh.IsSwept)
        {
            PolygonExchange.Fill(patches, factors, stride);
        }
        else
        {
            new LatticeExchange(mesh, panel).Fill(factors, stride);
        }

        Shade(patches, factors, stride, shadows);
        return factors;
    }

    /// <summary>Row-major factors from panel points to floor and skirt patches, rows padded to whole vectors.</summary>
    public static double[] FromPoints(PatchMesh mesh, LightPanel panel, ReceiverSet points, IReadOnlyList<Obstacle> shadows)
    {
        var stride = VectorMath.Padded(mesh.SenderCount);
        var factors = new double[points.Count * stride];
        var corners = mesh.IsSwept ? null : new CornerGather(mesh, panel);
        ParallelWork.For(points.Count, i =>
        {
            FillRow(mesh, corners, points, i, factors.AsSpan(i * stride, stride));
            ShadeRow(mesh, points, i, factors.AsSpan(i * stride, stride), shadows);
        });
        return factors;
    }

    private static void FillRow(PatchMesh mesh, CornerGather? corners, ReceiverSet points, int i, Span<double> row)
    {
        if (corners is not null)
        {
            corners.Fill(points.X[i], points.Y[i], row);
            return;
        }

        var (place, normal) = (points.Place(i), points.Normal(i));
        for (var j = 0; j < mesh.SenderCount; j++)
        {
            row[j] = PolygonFactor.From(place, normal, mesh.Patches[j]);
        }
    }

    private static void ShadeRow(PatchMesh mesh, ReceiverSet points, int i, Span<double> row, IReadOnlyList<Obstacle> shadows)
    {
        if (shadows.Count == 0)
        {
            return;
        }

        for (var j = 0; j < mesh.SenderCount; j++)
        {
            var (s, t) = Quarters[(i + j) & 3];
            if (Obstacle.AnyBlocks(shadows, points.Place(i), mesh.Patches[j].At(s, t)))
            {
                row[j] = 0;
            }
        }
    }

    // The same ray serves both ways, so that the exchange stays reciprocal.
    private static void Shade(Patch[] patches, double[] factors, int stride, IReadOnlyList<Obstacle> shadows)
    {
        if (shadows.Count == 0)
        {
            return;
        }

        ParallelWork.For(patches.Length, i =>
        {
            for (var j = i + 1; j < patches.Length; j++)
            {
                var ((s, t), (u, v)) = (Quarters[(i + j) & 3], Quarters[(i + (3 * j)) & 3]);
                if (Obstacle.AnyBlocks(shadows, patches[i].At(s, t), patches[j].At(u, v)))
                {
                    factors[(i * stride) + j] = 0;
                    factors[(j * stride) + i] = 0;
                }
            }
        });
    }
}
