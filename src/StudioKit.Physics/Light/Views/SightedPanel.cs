using UnitsNet;

namespace StudioKit.Physics.Light.Views;

/// <summary>One view of a panel over flashes of unit intensity: all that neither their power nor the camera's settings change.</summary>
internal sealed class SightedPanel
{
    // The frame is looked at in 25 × 17 points, edges and corners included.
    private const int Across = 25;
    private const int Upright = 17;

    private readonly LightMap _map;
    private readonly ViewRays _rays;
    private readonly Dictionary<(int Columns, int Rows), double[][]> _lattices = [];
    private IReadOnlyList<PanelPlace>? _outline;

    public SightedPanel(LightMap map, CameraView view)
    {
        (_map, View, _rays) = (map, view, new ViewRays(view, map.Panel.Height.Meters));
        Points = LookedAt();
    }

    public static int PointsOfFrame => Across * Upright;

    public CameraView View { get; }

    public IReadOnlyList<SeenPoint> Points { get; }

    public IReadOnlyList<PanelPlace> Outline => _outline ??= VisiblePatch.Of(_map.Panel, View).Outline;

    public bool IsOf(LightMap map) => _map.DiffersOnlyInIntensity(map);

    public double[] At(PanelPlace place)
    {
        var (x, s) = (place.Across.Meters, place.AlongSheet.Meters);
        return _map.UnitLuminanceTimes(x, s, Direction.From(new PanelSurface(_map.Panel).At(x, s), _rays.Pupil));
    }

    /// <summary>Every node of a lattice over the whole sheet, row by row from its front left corner.</summary>
    public double[][] Over(int columns, int rows)
    {
        if (!_lattices.TryGetValue((columns, rows), out var lattice))
        {
            lattice = [.. Enumerable.Range(0, columns * rows).Select(i => At(Node(i % columns, i / columns, columns, rows)))];
            _lattices.Add((columns, rows), lattice);
        }

        return lattice;
    }

    private PanelPlace Node(int column, int row, int columns, int rows) => new(
        _map.Panel.Width * (((double)column / (columns - 1)) - 0.5), _map.Panel.Depth * ((double)row / (rows - 1)));

    private SeenPoint[] LookedAt()
    {
        var surface = new PanelSurface(_map.Panel);
        List<SeenPoint> points = [];
        for (var i = 0; i < PointsOfFrame; i++)
        {
            var (row, column) = Math.DivRem(i, Across);
            var (right, up) = (((double)column / (Across - 1)) - 0.5, ((double)row / (Upright - 1)) - 0.5);
            var ray = _rays.Through(right, up);
            if (surface.TryMeet(_rays.Pupil, ray, out var met))
            {
                var place = new PanelPlace(Length.FromMeters(met.X), Length.FromMeters(met.S));
                points.Add(new SeenPoint(place, right, up, _map.UnitLuminanceTimes(met.X, met.S, -ray)));
            }
        }

        return [.. points];
    }
}
