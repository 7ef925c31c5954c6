namespace StudioKit.Physics.Light.Views;

/// <summary>One view of a panel over flashes of unit intensity: all that neither their power nor the camera's settings change.</summary>
internal sealed class SightedPanel
{
    // The frame is looked at in 25 × 17 points, edges and corners included.
    private const int Across = 25;
    private const int Upright = 17;

    private readonly LightMap _map;
    private readonly ViewRays _rays;
    private readonly Dictionary<(int Columns, int Rows), double[]> _lattices = [];
    private readonly double[] _luminances;
    private IReadOnlyList<PanelPlace>? _outline;

    public SightedPanel(LightMap map, CameraView view)
    {
        (_map, View, _rays) = (map, view, new ViewRays(view, map.Panel.Height.Meters));
        Points = LookedAt();
        _luminances = new double[Points.Length * Flashes];
        for (var i = 0; i < Points.Length; i++)
        {
            map.UnitLuminanceTimes(Points[i].X, Points[i].S, -_rays.Through(Points[i].FrameRight, Points[i].FrameUp), _luminances.AsSpan(i * Flashes, Flashes));
        }
    }

    public static int PointsOfFrame => Across * Upright;

    public CameraView View { get; }

    public SeenPoint[] Points { get; }

    public int Flashes => _map.Emitters.Count;

    public IReadOnlyList<PanelPlace> Outline => _outline ??= VisiblePatch.Of(_map.Panel, View).Outline;

    public bool IsOf(LightMap map) => _map.DiffersOnlyInIntensity(map);

    /// <summary>Luminance times time towards the camera of one of the points, for each flash at an axial intensity·time of 1 cd·s [cd·s/m²].</summary>
    public ReadOnlySpan<double> OfPoint(int index) => _luminances.AsSpan(index * Flashes, Flashes);

    /// <summary>The same of any place.</summary>
    public void At(PanelPlace place, Span<double> into)
    {
        var (x, s) = (place.Across.Meters, place.AlongSheet.Meters);
        _map.UnitLuminanceTimes(x, s, Direction.From(new PanelSurface(_map.Panel).At(x, s), _rays.Pupil), into);
    }

    /// <summary>The same of every node of a lattice over the whole sheet, row by row from its front left corner, node by node.</summary>
    public double[] Over(int columns, int rows)
    {
        if (!_lattices.TryGetValue((columns, rows), out var lattice))
        {
            lattice = new double[columns * rows * Flashes];
            for (var i = 0; i < columns * rows; i++)
            {
                At(Node(i % columns, i / columns, columns, rows), lattice.AsSpan(i * Flashes, Flashes));
            }

            _lattices.Add((columns, rows), lattice);
        }

        return lattice;
    }

    private PanelPlace Node(int column, int row, int columns, int rows) => new(
        _map.Panel.Width * (((double)column / (columns - 1)) - 0.5), _map.Panel.Depth * ((double)row / (rows - 1)));

    private SeenPoint[] LookedAt()
    {
        var shown = new ShownSheet(_map.Panel, View);
        var (points, count) = (new SeenPoint[PointsOfFrame], 0);
        for (var i = 0; i < PointsOfFrame; i++)
        {
            var (row, column) = Math.DivRem(i, Across);
            var (right, up) = (((double)column / (Across - 1)) - 0.5, ((double)row / (Upright - 1)) - 0.5);
            if (shown.TryMeet(right, up, out var met))
            {
                points[count++] = new SeenPoint(met.X, met.S, right, up);
            }
        }

        return points[..count];
    }
}
