using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Views;

/// <summary>What one view sees of a lit panel; the camera's settings only shift it, so it is looked at once for all of them.</summary>
/// <remarks>Not safe for use by several threads at once.</remarks>
public sealed class SeenPanel
{
    private readonly SightedPanel _sighted;

    private SeenPanel(LightMap map, SightedPanel sighted) => (Map, _sighted) = (map, sighted);

    /// <summary>Light on the panel.</summary>
    public LightMap Map { get; }

    /// <summary>The camera's place and field.</summary>
    public CameraView View => _sighted.View;

    /// <summary>Outline of what the view sees of the panel.</summary>
    public IReadOnlyList<PanelPlace> Outline => _sighted.Outline;

    /// <summary>Share of the frame that the panel fills [1]; 0 to 1.</summary>
    public double PanelFraction => (double)_sighted.Points.Length / SightedPanel.PointsOfFrame;

    internal IReadOnlyList<SeenPoint> Points => _sighted.Points;

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
        return new SeenPanel(map, new SightedPanel(map, view));
    }

    /// <summary>The same view of the same flashes at other intensities, without looking again.</summary>
    /// <param name="map">A map that <see cref="LightMap.AtIntensities"/> gave, of the same light.</param>
    /// <exception cref="ArgumentException">The map is of other flashes, or of the same in other places.</exception>
    [Source("Derived", "luminance is proportional to luminous intensity")]
    public SeenPanel Under(LightMap map)
    {
        ArgumentNullException.ThrowIfNull(map);
        return _sighted.IsOf(map) ? new SeenPanel(map, _sighted) : throw new ArgumentException("The map is of other light.", nameof(map));
    }

    /// <summary>Margins over the frame for what a camera is set to.</summary>
    /// <param name="camera">What the camera is set to.</param>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public WhiteMarginMap With(CameraCase camera)
    {
        ArgumentNullException.ThrowIfNull(camera);
        return new WhiteMarginMap(this, camera);
    }

    /// <summary>Luminance times time of one of <see cref="Points"/> [cd·s/m²].</summary>
    internal double LuminanceTimeAt(int index) => Map.Sum(_sighted.OfPoint(index));

    internal double LuminanceTime(PanelPlace place)
    {
        Span<double> luminances = stackalloc double[_sighted.Flashes];
        _sighted.At(place, luminances);
        return Map.Sum(luminances);
    }

    internal IEnumerable<double> LuminanceTimes(int columns, int rows)
    {
        var (lattice, flashes) = (_sighted.Over(columns, rows), _sighted.Flashes);
        return Enumerable.Range(0, columns * rows).Select(i => Map.Sum(lattice.AsSpan(i * flashes, flashes)));
    }
}
