using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Budgets;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Views;

/// <summary>The white margin of what one framing sees: its darkest and brightest point, and how much of the frame clips.</summary>
public sealed class WhiteMarginMap
{
    // The frame is looked at in 25 × 17 points, edges and corners included.
    private const int Across = 25;
    private const int Upright = 17;

    // What is darker than this counts as black: a logarithm of nothing helps nobody.
    private const double Black = -30;

    private readonly LightMap _map;
    private readonly double _perLuminanceTime;
    private readonly ViewRays _rays;

    private WhiteMarginMap(LightMap map, CameraView view, CameraCase camera)
    {
        (_map, View) = (map, view);
        _perLuminanceTime = PerLuminanceTime(camera);
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
    /// <param name="camera">What the camera is set to.</param>
    /// <exception cref="ArgumentException">The view is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public static WhiteMarginMap Of(LightMap map, CameraView view, CameraCase camera)
    {
        ArgumentNullException.ThrowIfNull(map);
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(camera);
        SceneCheck.Refuse([.. ViewCheck.Problems(map.Panel, view)]);
        return new WhiteMarginMap(map, view, camera);
    }

    /// <summary>Margin of any place on the sheet, in the frame or not, as seen from this camera.</summary>
    /// <param name="place">Place on the sheet.</param>
    /// <returns>Stops above clipping; −30 where no light arrives.</returns>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public Stops At(PanelPlace place)
    {
        var (x, s) = (place.Across.Meters, place.AlongSheet.Meters);
        return new Stops(MarginAt(x, s, Direction.From(new PanelSurface(_map.Panel).At(x, s), _rays.Pupil)));
    }

    /// <summary>Sensor exposure over the camera's clipping, for one cd·s/m² of the sheet [1].</summary>
    internal static double PerLuminanceTime(CameraCase camera) =>
        Math.Pow(2, CameraTerms.AgainstSaturation(camera) - camera.ClipPoint.Value);

    internal static double MarginOf(double ratio) => ratio > 0 ? Math.Max(Black, Math.Log2(ratio)) : Black;

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
        MarginOf(_map.LuminanceTime(x, s, towards) * _perLuminanceTime);
}
