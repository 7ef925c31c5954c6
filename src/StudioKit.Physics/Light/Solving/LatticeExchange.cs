namespace StudioKit.Physics.Light.Solving;

/// <summary>Form factors between all patches of a flat box, in closed form.</summary>
/// <remarks>
/// All patches lie on one lattice, so an exchange area depends only on how many cells apart two patches are: a few hundred
/// closed forms serve every pair.
/// </remarks>
internal sealed class LatticeExchange
{
    private readonly PatchMesh _mesh;
    private readonly (double X, double Y, double Z) _cell;
    private readonly double _height;
    private readonly (double Width, double Depth) _span;

    public LatticeExchange(PatchMesh mesh, LightPanel panel)
    {
        _mesh = mesh;
        _height = panel.Height.Meters;
        _span = (panel.Width.Meters, panel.Depth.Meters);
        _cell = (_span.Width / mesh.Columns, _span.Depth / mesh.Rows, _height / mesh.Levels);
    }

    /// <summary>Fills a row-major matrix F with F_ij, the share of patch i's light that reaches patch j.</summary>
    public void Fill(double[] factors, int stride)
    {
        FillOpposed(factors, stride, BoxFace.Floor, BoxFace.Panel, _cell.X, _cell.Y, _height);
        if (!_mesh.HasSkirts)
        {
            return;
        }

        FillOpposed(factors, stride, BoxFace.Left, BoxFace.Right, _cell.Y, _cell.Z, _span.Width);
        FillOpposed(factors, stride, BoxFace.Front, BoxFace.Back, _cell.X, _cell.Z, _span.Depth);
        foreach (var (first, second) in PerpendicularPairs())
        {
            FillPerpendicular(factors, stride, first, second);
        }
    }

    private void FillOpposed(double[] factors, int stride, BoxFace one, BoxFace other, double cellU, double cellV, double distance)
    {
        var (countU, countV) = Size(one);
        var table = new double[countU * countV];
        for (var v = 0; v < countV; v++)
        {
            for (var u = 0; u < countU; u++)
            {
                table[(v * countU) + u] = FormFactor.ParallelExchange(
                    u * cellU, (u + 1) * cellU, v * cellV, (v + 1) * cellV, 0, cellU, 0, cellV, distance);
            }
        }

        var area = cellU * cellV;
        for (var i = _mesh.Start(one); i < _mesh.End(one); i++)
        {
            var (u, v) = Place(one, i);
            for (var j = _mesh.Start(other); j < _mesh.End(other); j++)
            {
                var (s, t) = Place(other, j);
                var share = table[(Math.Abs(v - t) * countU) + Math.Abs(u - s)] / area;
                factors[(i * stride) + j] = share;
                factors[(j * stride) + i] = share;
            }
        }
    }

    private void FillPerpendicular(double[] factors, int stride, BoxFace one, BoxFace other)
    {
        var pair = new PerpendicularPair(one, other, this);
        var (oneArea, otherArea) = (pair.Cell.Shared * pair.Cell.First, pair.Cell.Shared * pair.Cell.Second);
        for (var i = _mesh.Start(one); i < _mesh.End(one); i++)
        {
            var (sharedHere, away) = pair.FirstPlace(Place(one, i));
            for (var j = _mesh.Start(other); j < _mesh.End(other); j++)
            {
                var (sharedThere, up) = pair.SecondPlace(Place(other, j));
                var exchange = pair.Exchange(Math.Abs(sharedHere - sharedThere), away, up);
                factors[(i * stride) + j] = exchange / oneArea;
                factors[(j * stride) + i] = exchange / otherArea;
            }
        }
    }

    // Cells of a face as (u, v): x before y before z.
    private (int U, int V) Size(BoxFace face) => face switch
    {
        BoxFace.Floor => (_mesh.Columns + (2 * _mesh.FloorOverlap), _mesh.Rows + (2 * _mesh.FloorOverlapRows)),
        BoxFace.Panel => (_mesh.Columns, _mesh.Rows),
        BoxFace.Left or BoxFace.Right => (_mesh.Rows, _mesh.Levels),
        _ => (_mesh.Columns, _mesh.Levels),
    };

    private (int U, int V) Place(BoxFace face, int patch)
    {
        var (v, u) = Math.DivRem(patch - _mesh.Start(face), Size(face).U);
        return face == BoxFace.Floor ? (u - _mesh.FloorOverlap, v - _mesh.FloorOverlapRows) : (u, v);
    }

    private static IEnumerable<(BoxFace First, BoxFace Second)> PerpendicularPairs()
    {
        foreach (var level in new[] { BoxFace.Floor, BoxFace.Panel })
        {
            foreach (var wall in new[] { BoxFace.Left, BoxFace.Right, BoxFace.Front, BoxFace.Back })
            {
                yield return (level, wall);
            }
        }

        foreach (var side in new[] { BoxFace.Left, BoxFace.Right })
        {
            yield return (side, BoxFace.Front);
            yield return (side, BoxFace.Back);
        }
    }

    /// <summary>Two faces at right angles: which way each is counted from their common edge, and the exchange areas.</summary>
    private sealed class PerpendicularPair
    {
        private readonly BoxFace _first;
        private readonly BoxFace _second;
        private readonly PatchMesh _mesh;
        private readonly (int Shared, int First, int Second) _count;
        private readonly double[] _table;

        public PerpendicularPair(BoxFace first, BoxFace second, LatticeExchange lattice)
        {
            (_first, _second, _mesh) = (first, second, lattice._mesh);
            var (cell, mesh) = (lattice._cell, lattice._mesh);
            (Cell, _count) = (IsLevel, IsSideWall) switch
            {
                (true, true) => ((cell.Y, cell.X, cell.Z), (mesh.Rows, mesh.Columns, mesh.Levels)),
                (true, false) => ((cell.X, cell.Y, cell.Z), (mesh.Columns, mesh.Rows, mesh.Levels)),
                _ => ((cell.Z, cell.Y, cell.X), (mesh.Levels, mesh.Rows, mesh.Columns)),
            };
            _table = Table();
        }

        public (double Shared, double First, double Second) Cell { get; }

        private bool IsLevel => _first is BoxFace.Floor or BoxFace.Panel;

        private bool IsSideWall => _second is BoxFace.Left or BoxFace.Right;

        public double Exchange(int apart, int away, int up) =>
            _table[(((apart * _count.First) + away) * _count.Second) + up];

        /// <summary>Cell of the first face as (along the common edge, away from it).</summary>
        public (int Shared, int Away) FirstPlace((int U, int V) place) => (IsLevel, _second) switch
        {
            (true, BoxFace.Left) => (place.V, place.U),
            (true, BoxFace.Right) => (place.V, _mesh.Columns - 1 - place.U),
            (true, BoxFace.Front) => (place.U, place.V),
            (true, _) => (place.U, _mesh.Rows - 1 - place.V),
            (false, BoxFace.Front) => (place.V, place.U),
            _ => (place.V, _mesh.Rows - 1 - place.U),
        };

        /// <summary>Cell of the second face as (along the common edge, away from it).</summary>
        public (int Shared, int Away) SecondPlace((int U, int V) place) => _first switch
        {
            BoxFace.Floor => (place.U, place.V),
            BoxFace.Panel => (place.U, _mesh.Levels - 1 - place.V),
            BoxFace.Left => (place.V, place.U),
            _ => (place.V, _mesh.Columns - 1 - place.U),
        };

        private double[] Table()
        {
            var table = new double[_count.Shared * _count.First * _count.Second];
            var index = 0;
            for (var apart = 0; apart < _count.Shared; apart++)
            {
                for (var away = 0; away < _count.First; away++)
                {
                    for (var up = 0; up < _count.Second; up++)
                    {
                        table[index++] = FormFactor.PerpendicularExchange(
                            apart * Cell.Shared, (apart + 1) * Cell.Shared, away * Cell.First, (away + 1) * Cell.First,
                            0, Cell.Shared, up * Cell.Second, (up + 1) * Cell.Second);
                    }
                }
            }

            return table;
        }
    }
}
