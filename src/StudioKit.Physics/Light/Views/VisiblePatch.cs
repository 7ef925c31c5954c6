using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Light.Views;

/// <summary>The part of the panel that one framing sees.</summary>
/// <param name="Outline">Places under the frame's edge, clockwise from its lower left corner; rays that miss the panel are left out.</param>
/// <param name="OnPanel">Share of the frame that the panel fills [1]; 0 to 1.</param>
public sealed record VisiblePatch(IReadOnlyList<PanelPlace> Outline, double OnPanel)
{
    private const int PointsPerEdge = 16;
    private const int Samples = 33;

    /// <summary>Cuts the camera's frustum with the panel.</summary>
    /// <param name="panel">The sheet, flat or swept.</param>
    /// <param name="view">The camera's place and field.</param>
    /// <exception cref="ArgumentException">The view is impossible; <see cref="SceneCheck"/> says beforehand how.</exception>
    [Source("Derived", "rays through the frame's edge cut with the plane or the arc of the sheet")]
    public static VisiblePatch Of(LightPanel panel, CameraView view)
    {
        ArgumentNullException.ThrowIfNull(panel);
        ArgumentNullException.ThrowIfNull(view);
        SceneCheck.Refuse([.. ViewCheck.Problems(panel, view)]);
        var shown = new ShownSheet(panel, view);
        return new VisiblePatch(Border(shown), Share(shown));
    }

    private static PanelPlace[] Border(ShownSheet shown)
    {
        List<PanelPlace> outline = [];
        for (var i = 0; i < 4 * PointsPerEdge; i++)
        {
            var share = ((double)(i % PointsPerEdge) / PointsPerEdge) - 0.5;
            var (right, up) = (i / PointsPerEdge) switch { 0 => (-0.5, share), 1 => (share, 0.5), 2 => (0.5, -share), _ => (-share, -0.5) };
            if (shown.TryMeet(right, up, out var place))
            {
                outline.Add(new PanelPlace(Length.FromMeters(place.X), Length.FromMeters(place.S)));
            }
        }

        return [.. outline];
    }

    private static double Share(ShownSheet shown)
    {
        var met = 0;
        for (var i = 0; i < Samples * Samples; i++)
        {
            var (row, column) = Math.DivRem(i, Samples);
            met += shown.TryMeet(((double)column / (Samples - 1)) - 0.5, ((double)row / (Samples - 1)) - 0.5, out _) ? 1 : 0;
        }

        return (double)met / (Samples * Samples);
    }
}
