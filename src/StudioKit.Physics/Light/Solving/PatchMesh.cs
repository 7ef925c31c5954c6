namespace StudioKit.Physics.Light.Solving;

/// <summary>The surfaces round the light cut into patches, in a number that does not depend on the points asked for.</summary>
internal sealed class PatchMesh
{
    // Ground further off than this many patches sees next to nothing of the panel, and the matrix grows with their square.
    private const int MostOverlap = 10;

    private readonly PanelSurface _surface;
    private readonly List<Patch> _patches = [];
    private readonly int[] _starts = new int[Enum.GetValues<BoxFace>().Length + 1];

    public PatchMesh(LightPanel panel, LightSurround surround, int perSide)
    {
        _surface = new PanelSurface(panel);
        HasGround = surround.Ground is not null;
        HasSkirts = surround.SkirtReflectance is not null;
        IsSwept = panel.IsSwept;
        (Columns, Levels) = (perSide, perSide);
        Rows = IsSwept ? perSide * 3 / 2 : perSide;
        Add(BoxFace.Floor, () => AddFloor(surround));
        Add(BoxFace.Ground, () => AddGround(surround.Ground));
        foreach (var face in new[] { BoxFace.Left, BoxFace.Right, BoxFace.Front, BoxFace.Back })
        {
            Add(face, () => AddSkirt(face, surround.SkirtReflectance));
        }

        Add(BoxFace.Panel, () => AddPanel(panel.UndersideReflectance));
        Patches = [.. _patches];
    }

    /// <summary>Patches across, along and up [1].</summary>
    public int Columns { get; }

    public int Rows { get; }

    public int Levels { get; }

    /// <summary>Rows and columns by which an open floor reaches beyond the panel on every side [1].</summary>
    public int FloorOverlap { get; private set; }

    public int FloorOverlapRows { get; private set; }

    public bool HasSkirts { get; }

    public bool IsSwept { get; }

    public bool HasGround { get; }

    /// <summary>Whether all faces are flat and square to each other.</summary>
    public bool IsSquare => !IsSwept && !HasGround;

    public Patch[] Patches { get; }

    /// <summary>Patches other than the panel's, which come first [1].</summary>
    public int SenderCount => Start(BoxFace.Panel);

    /// <summary>Index of a face's first patch.</summary>
    public int Start(BoxFace face) => _starts[(int)face];

    /// <summary>Index after a face's last patch.</summary>
    public int End(BoxFace face) => _starts[(int)face + 1];

    private void Add(BoxFace face, Action add)
    {
        _starts[(int)face] = _patches.Count;
        add();
        _starts[(int)face + 1] = _patches.Count;
    }

    private double EdgeX(int column) => (((double)column / Columns) - 0.5) * _surface.Width;

    private Position Edge(int row) => _surface.At(0, _surface.Depth * row / Rows);

    private void AddFloor(LightSurround surround)
    {
        if (HasGround && surround.FloorReflectance == 0)
        {
            // Behind a sheet that stands on its ground there is nothing to send light back.
            return;
        }

        if (!HasSkirts)
        {
            // Whole cells, so that panel and floor share one lattice.
            var margin = surround.OpenFloorMargin?.Meters ?? _surface.Height;
            FloorOverlap = Overlap(margin * Columns / _surface.Width);
            FloorOverlapRows = Overlap(margin * Rows / _surface.Depth);
        }

        for (var row = -FloorOverlapRows; row < Rows + FloorOverlapRows; row++)
        {
            var (near, far) = (FloorY(row), FloorY(row + 1));
            for (var column = -FloorOverlap; column < Columns + FloorOverlap; column++)
            {
                var (left, right) = (EdgeX(column), EdgeX(column + 1));
                _patches.Add(new Patch(
                    BoxFace.Floor, new(left, near, 0), new(right, near, 0), new(right, far, 0), new(left, far, 0), surround.FloorReflectance));
            }
        }
    }

    private static int Overlap(double cells) => (int)Math.Ceiling(Math.Min(MostOverlap, cells));

    // Beyond the panel the rows go on at the mean spacing.
    private double FloorY(int row) => row switch
    {
        < 0 => _surface.FrontY + (row * _surface.Depth / Rows),
        _ when row > Rows => _surface.BackY + ((row - Rows) * _surface.Depth / Rows),
        _ => Edge(row).Y,
    };

    // From where the sheet's plane meets it, behind the sheet to the end of the box; facing up, as people stand.
    private void AddGround(GroundBeside? ground)
    {
        if (ground is null)
        {
            return;
        }

        var (sin, cos) = Math.SinCos(ground.Lean.Radians);
        var (half, reach) = ((_surface.Width / 2) + ground.Beyond.Meters, _surface.Height / cos);
        Position At(int column, int level) => new(
            ((2.0 * column / Columns) - 1) * half,
            _surface.FrontY - ground.Under.Meters + (sin * reach * level / Levels),
            _surface.Height - (cos * reach * level / Levels));

        for (var level = 0; level < Levels; level++)
        {
            for (var column = 0; column < Columns; column++)
            {
                _patches.Add(new Patch(
                    BoxFace.Ground, At(column, level), At(column + 1, level), At(column + 1, level + 1), At(column, level + 1), ground.Reflectance));
            }
        }
    }

    private void AddSkirt(BoxFace face, double? reflectance)
    {
        if (reflectance is not { } share)
        {
            return;
        }

        var along = face is BoxFace.Left or BoxFace.Right ? Rows : Columns;
        for (var level = 0; level < Levels; level++)
        {
            for (var i = 0; i < along; i++)
            {
                var (a, b, c, d) = (Wall(face, i, level), Wall(face, i + 1, level), Wall(face, i + 1, level + 1), Wall(face, i, level + 1));
                var isReversed = face is BoxFace.Right or BoxFace.Front;
                _patches.Add(isReversed ? new Patch(face, b, a, d, c, share) : new Patch(face, a, b, c, d, share));
            }
        }
    }

    private Position Wall(BoxFace face, int along, int level)
    {
        var edge = face switch
        {
            BoxFace.Left => Edge(along) with { X = -_surface.Width / 2 },
            BoxFace.Right => Edge(along) with { X = _surface.Width / 2 },
            BoxFace.Front => Edge(0) with { X = EdgeX(along) },
            _ => Edge(Rows) with { X = EdgeX(along) },
        };
        return edge with { Z = edge.Z * level / Levels };
    }

    private void AddPanel(double reflectance)
    {
        for (var row = 0; row < Rows; row++)
        {
            var (near, far) = (Edge(row), Edge(row + 1));
            for (var column = 0; column < Columns; column++)
            {
                var (left, right) = (EdgeX(column), EdgeX(column + 1));
                _patches.Add(new Patch(
                    BoxFace.Panel, near with { X = left }, far with { X = left }, far with { X = right }, near with { X = right }, reflectance));
            }
        }
    }
}
