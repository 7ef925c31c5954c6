using System.Numerics;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Solving;

/// <summary>Form factors from points of a flat panel to the patches of floor and skirts, in closed form and many at once.</summary>
/// <remarks>
/// A patch's factor is the sum, with signs, of one function at its four corners, and neighbours share corners: each corner is
/// worked out once. For a corner (x, y) of the floor at distance c: x/p·atan(y/p) + y/q·atan(x/q), p² = x² + c², q² = y² + c².
/// For a corner of a skirt at distance d, x along and z under the panel: −d/r·atan(x/r), r² = d² + z²; each over 2π.
/// </remarks>
[Source("Howell", "configurations B-3 and B-4, differences of corner rectangles")]
internal sealed class CornerGather
{
    private readonly PatchMesh _mesh;
    private readonly double _height;
    private readonly (double Width, double Depth) _half;
    private readonly double[] _floorX;
    private readonly double[] _floorY;
    private readonly double[] _alongX;
    private readonly double[] _alongY;
    private readonly double[] _under;

    public CornerGather(PatchMesh mesh, LightPanel panel)
    {
        var lattice = new PatchLattice(mesh);
        _mesh = mesh;
        _height = panel.Height.Meters;
        _half = (panel.Width.Meters / 2, panel.Depth.Meters / 2);
        (_floorX, _floorY) = (Padded(lattice.FloorColumns), Padded(lattice.FloorRows));
        (_alongX, _alongY) = (Padded(lattice.EdgesOf(BoxFace.Panel).Across), Padded(lattice.EdgesOf(BoxFace.Panel).Along));
        _under = lattice.DistancesFrom(BoxFace.Panel);
    }

    /// <summary>Fills one point's row: the factor of every floor and skirt patch.</summary>
    public void Fill(double x, double y, Span<double> row)
    {
        // Two rows of corners, the near and the far one; the mesh keeps them to a few dozen.
        Span<double> scratch = stackalloc double[2 * Math.Max(_floorX.Length, Math.Max(_alongX.Length, _alongY.Length))];
        FillFloor(x, y, row[_mesh.Start(BoxFace.Floor).._mesh.End(BoxFace.Floor)], scratch);
        if (_mesh.HasSkirts)
        {
            FillSkirt(_alongY, _mesh.Rows, y, x + _half.Width, row[_mesh.Start(BoxFace.Left)..], scratch);
            FillSkirt(_alongY, _mesh.Rows, y, _half.Width - x, row[_mesh.Start(BoxFace.Right)..], scratch);
            FillSkirt(_alongX, _mesh.Columns, x, y + _half.Depth, row[_mesh.Start(BoxFace.Front)..], scratch);
            FillSkirt(_alongX, _mesh.Columns, x, _half.Depth - y, row[_mesh.Start(BoxFace.Back)..], scratch);
        }
    }

    private void FillFloor(double x, double y, Span<double> row, Span<double> scratch)
    {
        var columns = _mesh.Columns + (2 * _mesh.FloorOverlap);
        var rows = row.Length / columns;
        var near = scratch[.._floorX.Length];
        var far = scratch.Slice(_floorX.Length, _floorX.Length);
        FloorCorners(x, _floorY[0] - y, near);
        for (var j = 0; j < rows; j++)
        {
            FloorCorners(x, _floorY[j + 1] - y, far);
            Differences(far, near, row.Slice(j * columns, columns));
            var swap = near;
            near = far;
            far = swap;
        }
    }

    private void FloorCorners(double x, double v, Span<double> corners)
    {
        var square = new Vector<double>(_height * _height);
        var (y, q) = (new Vector<double>(v), new Vector<double>(Math.Sqrt((v * v) + (_height * _height))));
        for (var start = 0; start < corners.Length; start += VectorMath.Lanes)
        {
            var u = new Vector<double>(_floorX, start) - new Vector<double>(x);
            var p = Vector.SquareRoot((u * u) + square);
            ((u / p * VectorMath.Atan(y / p)) + (y / q * VectorMath.Atan(u / q))).CopyTo(corners[start..]);
        }
    }

    private void FillSkirt(double[] edges, int along, double place, double distance, Span<double> row, Span<double> scratch)
    {
        var low = scratch[..edges.Length];
        var high = scratch.Slice(edges.Length, edges.Length);
        SkirtCorners(edges, place, distance, _under[0], low);
        for (var level = 0; level < _mesh.Levels; level++)
        {
            SkirtCorners(edges, place, distance, _under[level + 1], high);
            Differences(low, high, row.Slice(level * along, along));
            var swap = low;
            low = high;
            high = swap;
        }
    }

    private static void SkirtCorners(double[] edges, double place, double distance, double under, Span<double> corners)
    {
        var r = Math.Sqrt((distance * distance) + (under * under));
        var (inverse, share) = (new Vector<double>(1 / r), new Vector<double>(-distance / r));
        for (var start = 0; start < corners.Length; start += VectorMath.Lanes)
        {
            var x = new Vector<double>(edges, start) - new Vector<double>(place);
            (share * VectorMath.Atan(x * inverse)).CopyTo(corners[start..]);
        }
    }

    private static void Differences(ReadOnlySpan<double> plus, ReadOnlySpan<double> minus, Span<double> factors)
    {
        const double Scale = 1 / (2 * Math.PI);
        for (var i = 0; i < factors.Length; i++)
        {
            factors[i] = Scale * (plus[i + 1] - plus[i] - (minus[i + 1] - minus[i]));
        }
    }

    // What fills the last vector up counts for nothing.
    private static double[] Padded(double[] edges)
    {
        var padded = new double[VectorMath.Padded(edges.Length)];
        edges.CopyTo(padded, 0);
        return padded;
    }
}
