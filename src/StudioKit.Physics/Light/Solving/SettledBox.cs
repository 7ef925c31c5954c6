using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Solving;

/// <summary>All bounces of a box at once, for one that many flashes are tried in: what the patches get straight is turned into what they get in the end by one matrix.</summary>
/// <remarks>
/// E = (I − F·R)⁻¹·D, the inverse by Gauss–Jordan elimination. No pivot is looked for: a row of F·R sums to the reflectance at most, which is less than 1,
/// so that the diagonal outweighs the rest of its row throughout.
/// </remarks>
[Source("Goral1984", "radiosity equation as a system of linear equations")]
internal sealed class SettledBox
{
    private readonly PatchMesh _mesh;
    private readonly double[] _gather;
    private readonly double[] _bounces;
    private readonly int _stride;
    private readonly int _senderStride;

    public SettledBox(PatchMesh mesh, FormFactors factors)
    {
        (_mesh, _gather) = (mesh, factors.Gather);
        (_stride, _senderStride) = (VectorMath.PaddedRow(mesh.Patches.Length), VectorMath.PaddedRow(mesh.SenderCount));
        _bounces = Inverse(mesh, factors.Exchange, _stride);
    }

    /// <summary>What floor and skirts send in the end, from what all patches get straight from a flash [lx·s], filled up to a whole row.</summary>
    public double[] Exitances(double[] patchExposure)
    {
        var (direct, senders) = (new double[_stride], new double[_senderStride]);
        patchExposure.CopyTo(direct, 0);
        for (var i = 0; i < _mesh.SenderCount; i++)
        {
            senders[i] = _mesh.Patches[i].Reflectance * VectorMath.Dot(_bounces.AsSpan(i * _stride, _stride), direct);
        }

        return senders;
    }

    /// <summary>What that brings to the first points of the box [lx·s].</summary>
    public void Gather(double[] senders, Span<double> arriving)
    {
        for (var i = 0; i < arriving.Length; i++)
        {
            arriving[i] = VectorMath.Dot(_gather.AsSpan(i * _senderStride, _senderStride), senders);
        }
    }

    private static double[] Inverse(PatchMesh mesh, double[] exchange, int stride)
    {
        var (count, rows) = (mesh.Patches.Length, new double[exchange.Length]);
        for (var i = 0; i < count; i++)
        {
            for (var j = 0; j < count; j++)
            {
                rows[(i * stride) + j] = (i == j ? 1 : 0) - (exchange[(i * stride) + j] * mesh.Patches[j].Reflectance);
            }
        }

        for (var pivot = 0; pivot < count; pivot++)
        {
            Eliminate(rows, pivot, count, stride);
        }

        return rows;
    }

    // In place: the pivot's column, which would become a unit vector, holds the inverse's instead.
    private static void Eliminate(double[] rows, int pivot, int count, int stride)
    {
        var own = rows.AsSpan(pivot * stride, stride);
        var scale = 1 / own[pivot];
        own[pivot] = 1;
        VectorMath.Scale(own, scale);
        for (var i = 0; i < count; i++)
        {
            var row = rows.AsSpan(i * stride, stride);
            if (i != pivot && row[pivot] is not 0 and var share)
            {
                row[pivot] = 0;
                VectorMath.Subtract(row, share, own);
            }
        }
    }
}
