using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Views;

/// <summary>What one view sees of a lit panel; the camera's settings only shift it, so it is worked out once for all of them.</summary>
public sealed class SeenPanel
{
    // The frame is looked at in 25 × 17 points, edges and corners included.
    private const int Across = 25;
    private const int Upright = 17;

    private readonly ViewRays _rays;
    private readonly Lazy<IReadOnlyList<PanelPlace>> _outline;

    private SeenPanel(LightMap map, CameraView view)
    {
        (Map, View, _rays) = (map, view, new ViewRays(view, map.Panel.Height.Meters));
        _outline = new(() => VisiblePatch.Of(map.Panel, view).Outline);
        Points = LookedAt();
    }

    /// <summary>Light on the panel.</summary>
    public LightMap Map { get; }

    /// <summary>The camera's place and field.</summary>
    public CameraView View { get; }

    /// <summary>Outline of what the view sees of the panel.</summary>
    public IReadOnlyList<PanelPlace> Outline => _outline.Value;

    /// <summary>Share of the frame that the panel fills [1]; 0 to 1.</summary>
    public double PanelFraction => (double)Points.Count / PointsOfFrame;

    internal static int PointsOfFrame => Across * Upright;

    internal IReadOnlyList<SeenPoint> Points { get; }

    /// <summary>Looks at a lit panel.</summary>
    /// <param name="map">Light on the panel.</param>
    /// <param name="view">The camera's place and field.</param>
    /// <exception cref="ArgumentException">The view is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Derived", "luminance of the sheet along the rays through the entrance pupil")]
    public static SeenPanel Of(LightMap map, CameraView view)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(view);
        SceneCheck.Refuse([.. ViewCheck.Problems(map.Panel, view)]);
        return new SeenPanel(map, view);
    }

    /// <summary>Margins over the frame for what a camera is set to.</summary>
    /// <param name="camera">What the camera is set to.</param>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public WhiteMarginMap With(CameraCase camera)
    {
        ArgumentNullException.ThrowIfNull(camera);
        return new WhiteMarginMap(this, camera);
    }

    /// <summary>Luminance times time of any place on the sheet, in the frame or not, towards this camera [cd·s/m²].</summary>
    internal double LuminanceTime(PanelPlace place)
    {
        var (x, s) = (place.Across.Meters, place.AlongSheet.Meters);
        return Map.LuminanceTime(x, s, Direction.From(new PanelSurface(Map.Panel).At(x, s), _rays.Pupil));
    }

    private SeenPoint[] LookedAt()
    {
        var surface = new PanelSurface(Map.Panel);
        List<SeenPoint> points = [];
        for (var i = 0; i < PointsOfFrame; i++)
        {
            var (row, column) = Math.DivRem(i, Across);
            var (right, up) = (((double)column / (Across - 1)) - 0.5, ((double)row / (Upright - 1)) - 0.5);
            var ray = _rays.Through(right, up);
            if (surface.TryMeet(_rays.Pupil, ray, out var met))
            {
                var place = new PanelPlace(Length.FromMeters(met.X), Length.FromMeters(met.S));
                points.Add(new SeenPoint(place, right, up, Map.LuminanceTime(met.X, met.S, -ray)));
            }
        }

        return [.. points];
    }
}
