using StudioKit.Physics.Light.Obstacles;

namespace StudioKit.Physics.Light.Solving;

/// <summary>The surfaces round the light cut into patches, in a number that hardly depends on the box's shape and not at all on the points asked for.</summary>
/// <remarks>
/// Patches are as near to squares as whole numbers let them be: light that reaches one end of a long patch leaves it all along, and so would creep down a long low box.
/// Where there is a frame, whose pipes mostly lie along the box's edges, patches are narrower there: what a pipe hides of a surface is what it keeps dark too, and a patch
/// much wider than a pipe would lose the light twice, arriving and leaving.
/// </remarks>
internal sealed class PatchMesh
{
    // Ground further off than this many patches sees next to nothing of the panel, and the matrix grows with their square.
    private const int MostOverlap = 10;

    // A side shorter than this many patches leaves light no room to fall off along it; a longer one than the greatest number would make the matrix grow with the box's length.
    private const int LeastPerSide = 3;
    private const int MostPerSide = 24;

    // How far patches are moved towards the edges, from 0 for equal ones; found by tracing paths in a framed studio.
    private const double Crowding = 0.8;

    private readonly PanelSurface _surface;
    private readonly bool _isCrowded;
    private readonly List<Patch> _patches = [];
    private readonly int[] _starts = new int[Enum.GetValues<BoxFace>().Length + 1];

    /// <summary>Cuts the surfaces into about as many patches as a cube has with so many a side.</summary>
    public PatchMesh(LightPanel panel, LightSurround surround, int perSide)
    {
        _surface = new PanelSurface(panel);
        HasGround = surround.Ground is not null;
        HasSkirts = surround.SkirtReflectance is not null;
        IsSwept = panel.IsSwept;
        _isCrowded = IsSquare && HasSkirts && HasPipes(surround);
        (Columns, Rows, Levels) = HasGround ? (perSide, perSide, perSide) : Counts(PatchSide(perSide));
        Rows = IsSwept ? Rows * 3 / 2 : Rows;
        Add(BoxFace.Floor, () => AddFloor(surround));
        Add(BoxFace.Ground, () => AddGround(surround.Ground));
        foreach (var face in new[] { BoxFace.Left, BoxFace.Right, BoxFace.Front, BoxFace.Back })
        {
            Add(face, () => AddSkirt(face, surround.SkirtReflectance));
        }

        Add(BoxFace.Panel, () => AddPanel(panel.UndersideReflectance));
        Patches = [.. _patches];
    }

    /// <summary>Whether a surround has pipes, and the box is therefore cut otherwise than a bare one.</summary>
    public static bool HasPipes(LightSurround surround) => surround.Frame.Any(obstacle => obstacle is PipeObstacle);

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

    /// <summary>Place of an edge between columns of patches, and beyond them on an open floor [m].</summary>
    public double EdgeX(int column) => (Share(column, Columns) - 0.5) * _surface.Width;

    /// <summary>Place of an edge between rows; beyond the panel they go on at the mean spacing [m].</summary>
    public double EdgeY(int row) => row switch
    {
        < 0 => _surface.FrontY + (row * _surface.Depth / Rows),
        _ when row > Rows => _surface.BackY + ((row - Rows) * _surface.Depth / Rows),
        _ => Edge(row).Y,
    };

    /// <summary>Height of an edge between the levels of a flat box [m].</summary>
    public double EdgeZ(int level) => _surface.Height * Share(level, Levels);

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

    // Of the square that as many times over covers the closed box, or the panel where only that and the ground count [m].
    private double PatchSide(int perSide)
    {
        var (width, depth, height) = (_surface.Width, _surface.Depth, _surface.Height);
        var covered = HasSkirts ? ((width * depth) + (depth * height) + (height * width)) / 3 : width * depth;
        return Math.Sqrt(covered) / perSide;
    }

    private (int Columns, int Rows, int Levels) Counts(double side) => (Count(_surface.Width, side), Count(_surface.Depth, side), Count(_surface.Height, side));

    private static int Count(double length, double side) => (int)Math.Clamp(Math.Round(length / side), LeastPerSide, MostPerSide);

    // By a polynomial, which every processor rounds alike.
    private double Share(int edge, int count)
    {
        var even = (double)edge / count;
        return _isCrowded ? even + (Crowding * ((even * even * (3 - (2 * even))) - even)) : even;
    }

    private Position Edge(int row) => _surface.At(0, _surface.Depth * Share(row, Rows));

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
            var (near, far) = (EdgeY(row), EdgeY(row + 1));
            for (var column = -FloorOverlap; column < Columns + FloorOverlap; column++)
            {
                var (left, right) = (EdgeX(column), EdgeX(column + 1));
                _patches.Add(new Patch(
                    BoxFace.Floor, new(left, near, 0), new(right, near, 0), new(right, far, 0), new(left, far, 0), surround.FloorReflectance));
            }
        }
    }

    private static int Overlap(double cells) => (int)Math.Ceiling(Math.Min(MostOverlap, cells));

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
        return edge with { Z = edge.Z * Share(level, Levels) };
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
