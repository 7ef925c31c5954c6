namespace StudioKit.Physics.Light.Solving;

/// <summary>The lattice that all patches of a flat box lie on: its edges along the box's three sides, and which cell of a face a patch is.</summary>
internal sealed class PatchLattice
{
    private readonly PatchMesh _mesh;
    private readonly double[] _columns;
    private readonly double[] _rows;
    private readonly double[] _levels;

    public PatchLattice(PatchMesh mesh)
    {
        _mesh = mesh;
        _columns = [.. Enumerable.Range(0, mesh.Columns + 1).Select(mesh.EdgeX)];
        _rows = [.. Enumerable.Range(0, mesh.Rows + 1).Select(mesh.EdgeY)];
        _levels = [.. Enumerable.Range(0, mesh.Levels + 1).Select(mesh.EdgeZ)];
        FloorColumns = mesh.FloorOverlap == 0 ? _columns : [.. Enumerable.Range(-mesh.FloorOverlap, mesh.Columns + (2 * mesh.FloorOverlap) + 1).Select(mesh.EdgeX)];
        FloorRows = mesh.FloorOverlapRows == 0 ? _rows : [.. Enumerable.Range(-mesh.FloorOverlapRows, mesh.Rows + (2 * mesh.FloorOverlapRows) + 1).Select(mesh.EdgeY)];
        Areas = [.. mesh.Patches.Select(patch => patch.Area)];
    }

    /// <summary>Edges of the floor, which reaches beyond the panel where there are no skirts [m].</summary>
    public double[] FloorColumns { get; }

    public double[] FloorRows { get; }

    /// <summary>Area of every patch [m²].</summary>
    public double[] Areas { get; }

    /// <summary>A face's edges one way and the other, x before y before z [m].</summary>
    public (double[] Across, double[] Along) EdgesOf(BoxFace face) => face switch
    {
        BoxFace.Floor => (FloorColumns, FloorRows),
        BoxFace.Panel => (_columns, _rows),
        BoxFace.Left or BoxFace.Right => (_rows, _levels),
        _ => (_columns, _levels),
    };

    /// <summary>The edges along the side that two faces at right angles share [m].</summary>
    public double[] SharedEdges(BoxFace one, BoxFace other) =>
        new[] { _columns, _rows, _levels }.Single(edges => edges != EdgesTowards(one) && edges != EdgesTowards(other));

    /// <summary>The edges that lie behind each other as seen from a face, by their distances from it [m].</summary>
    public double[] DistancesFrom(BoxFace face)
    {
        var edges = EdgesTowards(face);
        var place = face is BoxFace.Floor or BoxFace.Left or BoxFace.Front ? edges[0] : edges[^1];
        return Array.ConvertAll(edges, edge => Math.Abs(edge - place));
    }

    /// <summary>A patch's cell in its face, counted as <see cref="EdgesOf"/> has the edges.</summary>
    public (int Across, int Along) Cell(BoxFace face, int patch)
    {
        var (along, across) = Math.DivRem(patch - _mesh.Start(face), EdgesOf(face).Across.Length - 1);
        return (across, along);
    }

    /// <summary>The same by two of its sides: that which it shares with another face, and that which leads away from the other.</summary>
    public (int Shared, int Away) CellFrom(BoxFace other, BoxFace face, int patch)
    {
        var (across, along) = Cell(face, patch);
        return EdgesOf(face).Across == EdgesTowards(other) ? (along, across) : (across, along);
    }

    private double[] EdgesTowards(BoxFace face) => face switch
    {
        BoxFace.Floor or BoxFace.Panel => _levels,
        BoxFace.Left or BoxFace.Right => _columns,
        _ => _rows,
    };
}
