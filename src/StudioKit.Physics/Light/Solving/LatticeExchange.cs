namespace StudioKit.Physics.Light.Solving;

/// <summary>Form factors between all patches of a flat box, in closed form.</summary>
/// <remarks>
/// All patches lie on one lattice, and an exchange area is the sum, with signs, of one function at sixteen pairs of corners. That depends on how far
/// apart edges are and on nothing else, so a few thousand values serve every pair.
/// </remarks>
internal sealed class LatticeExchange
{
    private readonly PatchMesh _mesh;
    private readonly PatchLattice _lattice;
    private readonly double[] _factors;
    private readonly int _stride;

    private LatticeExchange(PatchMesh mesh, PatchLattice lattice, double[] factors, int stride) => (_mesh, _lattice, _factors, _stride) = (mesh, lattice, factors, stride);

    /// <summary>Fills a row-major matrix F with F_ij, the share of patch i's light that reaches patch j.</summary>
    public static void Fill(PatchMesh mesh, double[] factors, int stride)
    {
        var lattice = new LatticeExchange(mesh, new PatchLattice(mesh), factors, stride);
        lattice.FillOpposed(BoxFace.Floor, BoxFace.Panel);
        if (!mesh.HasSkirts)
        {
            return;
        }

        lattice.FillOpposed(BoxFace.Left, BoxFace.Right);
        lattice.FillOpposed(BoxFace.Front, BoxFace.Back);
        foreach (var (first, second) in PerpendicularPairs())
        {
            lattice.FillPerpendicular(first, second);
        }
    }

    private void FillOpposed(BoxFace one, BoxFace other)
    {
        var (here, there, distance) = (_lattice.EdgesOf(one), _lattice.EdgesOf(other), _lattice.DistancesFrom(one).Max());
        var (across, along) = (new EdgeSteps(here.Across, there.Across), new EdgeSteps(here.Along, there.Along));
        double[] corners = [.. from u in across.Lengths from v in along.Lengths select FormFactor.ParallelCorner(u, v, distance)];
        for (var i = _mesh.Start(one); i < _mesh.End(one); i++)
        {
            var cell = _lattice.Cell(one, i);
            for (var j = _mesh.Start(other); j < _mesh.End(other); j++)
            {
                var seen = _lattice.Cell(other, j);
                Set(i, j, across.Between(cell.Across, seen.Across).Sum(along.Between(cell.Along, seen.Along), corners, along.Lengths.Length));
            }
        }
    }

    private void FillPerpendicular(BoxFace one, BoxFace other)
    {
        var pair = new PerpendicularPair(_lattice, one, other);
        (int, int)[] seen = [.. Enumerable.Range(_mesh.Start(other), _mesh.End(other) - _mesh.Start(other)).Select(j => _lattice.CellFrom(one, other, j))];
        for (var i = _mesh.Start(one); i < _mesh.End(one); i++)
        {
            var cell = _lattice.CellFrom(other, one, i);
            for (var j = 0; j < seen.Length; j++)
            {
                Set(i, _mesh.Start(other) + j, pair.Exchange(cell, seen[j]));
            }
        }
    }

    private void Set(int i, int j, double exchange)
    {
        _factors[(i * _stride) + j] = exchange / _lattice.Areas[i];
        _factors[(j * _stride) + i] = exchange / _lattice.Areas[j];
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
}
