using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Solving;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light;

/// <summary>The white margin of what one framing sees: its darkest and brightest point, and how much of the frame clips.</summary>
public sealed class WhiteMarginMap
{
    // The frame is looked at in 25 × 17 points, edges and corners included.
    private const int Across = 25;
    private const int Upright = 17;

    private readonly LightMap _map;
    private readonly double _perLuminanceTime;
    private readonly ScatterLobe _lobe;
    private readonly ViewRays _rays;

    private WhiteMarginMap(LightMap map, CameraView view, CameraExposure exposure)
    {
        (_map, View) = (map, view);
        _perLuminanceTime = WhiteMargin.PerLuminanceTime(exposure);
        _lobe = new ScatterLobe(map.Panel.ScatterExponent);
        _rays = new ViewRays(view, map.Panel.Height.Meters);
        Points = LookedAt();
        Darkest = Points.MinBy(point => point.Margin.Value);
        Brightest = Points.MaxBy(point => point.Margin.Value);
    }

    /// <summary>The framing.</summary>
    public CameraView View { get; }

    /// <summary>Points of the frame that fall on the panel, row by row from the frame's lower left.</summary>
    public IReadOnlyList<MarginPoint> Points { get; }

    /// <summary>The visible point with the least margin; none where the frame does not see the panel.</summary>
    public MarginPoint? Darkest { get; }

    /// <summary>The visible point with the greatest margin.</summary>
    public MarginPoint? Brightest { get; }

    /// <summary>Share of the frame that the panel fills [1]; 0 to 1.</summary>
    public double PanelFraction => (double)Points.Count / (Across * Upright);

    /// <summary>Share of the frame that clips to white [1]; 0 to 1.</summary>
    public double ClippedFraction => (double)Points.Count(point => point.Margin.Value >= 0) / (Across * Upright);

    /// <summary>Works out the margin over a frame.</summary>
    /// <param name="map">Light on the panel.</param>
    /// <param name="view">The camera's place and field.</param>
    /// <param name="exposure">What the camera is set to.</param>
    /// <exception cref="ArgumentException">The view is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Derived", "luminance of the sheet towards the entrance pupil, then the exposure equation of ISO 12232")]
    public static WhiteMarginMap Of(LightMap map, CameraView view, CameraExposure exposure)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(exposure);
        SceneCheck.Refuse([.. ViewCheck.Problems(map.Panel, view)]);
        return new WhiteMarginMap(map, view, exposure);
    }

    /// <summary>Margin of any place on the sheet, in the frame or not, as seen from this camera.</summary>
    /// <param name="place">Place on the sheet.</param>
    public Stops At(PanelPlace place)
    {
        var (x, s) = (place.Across.Meters, place.AlongSheet.Meters);
        return new Stops(MarginAt(x, s, Direction.From(new PanelSurface(_map.Panel).At(x, s), _rays.Pupil)));
    }

    private MarginPoint[] LookedAt()
    {
        var surface = new PanelSurface(_map.Panel);
        List<MarginPoint> points = [];
        for (var i = 0; i < Across * Upright; i++)
        {
            var (row, column) = Math.DivRem(i, Across);
            var (right, up) = (((double)column / (Across - 1)) - 0.5, ((double)row / (Upright - 1)) - 0.5);
            var ray = _rays.Through(right, up);
            if (surface.TryMeet(_rays.Pupil, ray, out var met))
            {
                var place = new PanelPlace(Length.FromMeters(met.X), Length.FromMeters(met.S));
                points.Add(new MarginPoint(place, right, up, new Stops(MarginAt(met.X, met.S, -ray))));
            }
        }

        return [.. points];
    }

    private double MarginAt(double x, double s, Direction towards) =>
        WhiteMargin.Stop(_map.LuminanceTime(x, s, towards, _lobe) * _perLuminanceTime);
}
