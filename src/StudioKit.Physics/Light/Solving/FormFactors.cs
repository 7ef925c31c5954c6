namespace StudioKit.Physics.Light.Solving;

/// <summary>The two matrices of a box with nothing in the light's way: between patches, and from panel points to patches.</summary>
/// <param name="Exchange">Row-major F_ij between patches, rows padded to whole vectors.</param>
/// <param name="Gather">Row-major factors from panel points to floor and skirt patches, rows padded to whole vectors.</param>
internal sealed record FormFactors(double[] Exchange, double[] Gather)
{
    /// <summary>Closed forms where all is flat and square, Lambert's polygon sum elsewhere.</summary>
    public static FormFactors Of(PatchMesh mesh, LightPanel panel, ReceiverSet points) => new(Between(mesh), FromPoints(mesh, panel, points));

    /// <summary>The same without what obstacles block.</summary>
    public FormFactors Without(IReadOnlyCollection<ShadowSet> shadows)
    {
        if (shadows.Count == 0)
        {
            return this;
        }

        var shaded = new FormFactors([.. Exchange], [.. Gather]);
        foreach (var shadow in shadows)
        {
            shadow.Darken(shaded);
        }

        return shaded;
    }

    private static double[] Between(PatchMesh mesh)
    {
        var stride = VectorMath.PaddedRow(mesh.Patches.Length);
        var factors = new double[mesh.Patches.Length * stride];
        if (mesh.IsSquare)
        {
            LatticeExchange.Fill(mesh, factors, stride);
        }
        else
        {
            PolygonExchange.Fill(mesh.Patches, factors, stride);
        }

        return factors;
    }

    private static double[] FromPoints(PatchMesh mesh, LightPanel panel, ReceiverSet points)
    {
        var stride = VectorMath.PaddedRow(mesh.SenderCount);
        var factors = new double[points.Count * stride];
        var corners = mesh.IsSquare ? new CornerGather(mesh, panel) : null;
        ParallelWork.For(points.Count, i => FillRow(mesh, corners, points, i, factors.AsSpan(i * stride, stride)));
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
}
