using StudioKit.Physics.Exposure;
using StudioKit.Physics.Exposure.Budgets;
using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Views;

/// <summary>The white margin of what one framing sees: its darkest and brightest point, and how much of the frame clips.</summary>
public sealed class WhiteMarginMap
{
    // What is darker than this counts as black: a logarithm of nothing helps nobody.
    private const double Black = -30;

    // Points as dark as each other by symmetry differ in the last digits; the first of them counts.
    private const double Equal = 1e-12;

    private readonly double _perLuminanceTime;
    private IReadOnlyList<MarginPoint>? _points;

    internal WhiteMarginMap(SeenPanel seen, CameraCase camera)
    {
        Seen = seen;
        _perLuminanceTime = PerLuminanceTime(camera);
        var (darkest, brightest) = Extremes(seen);
        Darkest = darkest < 0 ? null : Margin(darkest);
        Brightest = brightest < 0 ? null : Margin(brightest);
    }

    /// <summary>What the framing sees, whatever the camera is set to.</summary>
    public SeenPanel Seen { get; }

    /// <summary>The framing.</summary>
    public CameraView View => Seen.View;

    /// <summary>Points of the frame that fall on the panel, row by row from the frame's lower left.</summary>
    /// <remarks>Made when somebody asks: most who look want the extremes alone.</remarks>
    public IReadOnlyList<MarginPoint> Points => _points ??= [.. Enumerable.Range(0, Seen.Points.Count).Select(Margin)];

    /// <summary>The visible point with the least margin; none where the frame does not see the panel.</summary>
    public MarginPoint? Darkest { get; }

    /// <summary>The visible point with the greatest margin.</summary>
    public MarginPoint? Brightest { get; }

    /// <summary>Share of the frame that the panel fills [1]; 0 to 1.</summary>
    public double PanelFraction => Seen.PanelFraction;

    /// <summary>Share of the frame that clips to white [1]; 0 to 1.</summary>
    public double ClippedFraction => ClippedFractionWith(default);

    /// <summary>Share of the frame that clips to white with more or less light [1]; 0 to 1.</summary>
    /// <param name="gain">How much more light.</param>
    [Source("Derived", "light grows in step with power, so a power shifts every margin alike")]
    public double ClippedFractionWith(Stops gain) =>
        (double)Enumerable.Range(0, Seen.Points.Count).Count(point => MarginAt(Seen.LuminanceTimeAt(point)).Value + gain.Value >= 0) / SightedPanel.PointsOfFrame;

    /// <summary>Works out the margin over a frame.</summary>
    /// <param name="map">Light on the panel.</param>
    /// <param name="view">The camera's place and field.</param>
    /// <param name="camera">What the camera is set to.</param>
    /// <exception cref="ArgumentException">The view is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public static WhiteMarginMap Of(LightMap map, CameraView view, CameraCase camera) => SeenPanel.Of(map, view).With(camera);

    /// <summary>Margin of any place on the sheet, in the frame or not, as seen from this camera.</summary>
    /// <param name="place">Place on the sheet.</param>
    /// <returns>Stops above clipping; −30 where no light arrives.</returns>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public Stops At(PanelPlace place) => MarginAt(Seen.LuminanceTime(place));

    /// <summary>Margins at the nodes of a lattice over the whole sheet, in the frame or not, row by row from its front left corner.</summary>
    /// <param name="columns">Nodes across, those on both edges counted [1]; ≥ 2.</param>
    /// <param name="rows">Nodes along the sheet [1]; ≥ 2.</param>
    /// <returns>Stops above clipping; −30 where no light arrives.</returns>
    /// <exception cref="ArgumentOutOfRangeException">There are fewer than two columns or rows.</exception>
    [Source("Iso12232", "image-plane exposure of the sheet's luminance towards the entrance pupil, against 78/S")]
    public IReadOnlyList<Stops> Over(int columns, int rows)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(columns, 2);
        ArgumentOutOfRangeException.ThrowIfLessThan(rows, 2);
        return [.. Seen.LuminanceTimes(columns, rows).Select(MarginAt)];
    }

    /// <summary>Sensor exposure over the camera's clipping, for one cd·s/m² of the sheet [1].</summary>
    internal static double PerLuminanceTime(CameraCase camera) =>
        Math.Pow(2, CameraTerms.AgainstSaturation(camera) - camera.ClipPoint.Value);

    internal static double MarginOf(double ratio) => ratio > 0 ? Math.Max(Black, Math.Log2(ratio)) : Black;

    // The margin grows with luminance, so the extremes need no logarithms; of points as dark as black, or equally bright, the first.
    private (int Darkest, int Brightest) Extremes(SeenPanel seen)
    {
        var black = Math.Pow(2, Black) / _perLuminanceTime;
        var (darkest, brightest) = (-1, -1);
        var (least, most) = (double.PositiveInfinity, 0.0);
        for (var point = 0; point < seen.Points.Count; point++)
        {
            var luminance = Math.Max(black, seen.LuminanceTimeAt(point));
            (darkest, least) = luminance < least * (1 - Equal) ? (point, luminance) : (darkest, least);
            (brightest, most) = luminance > most * (1 + Equal) ? (point, luminance) : (brightest, most);
        }

        return (darkest, brightest);
    }

    private MarginPoint Margin(int point)
    {
        var at = Seen.Points[point];
        return new MarginPoint(at.Place, at.FrameRight, at.FrameUp, MarginAt(Seen.LuminanceTimeAt(point)));
    }

    private Stops MarginAt(double luminanceTime) => new(MarginOf(luminanceTime * _perLuminanceTime));
}
