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
        var (surface, rays) = (new PanelSurface(panel), new ViewRays(view, panel.Height.Meters));
        return new VisiblePatch(Border(surface, rays), Share(surface, rays));
    }

    private static PanelPlace[] Border(PanelSurface surface, ViewRays rays)
    {
        List<PanelPlace> outline = [];
        for (var i = 0; i < 4 * PointsPerEdge; i++)
        {
            var share = ((double)(i % PointsPerEdge) / PointsPerEdge) - 0.5;
            var (right, up) = (i / PointsPerEdge) switch { 0 => (-0.5, share), 1 => (share, 0.5), 2 => (0.5, -share), _ => (-share, -0.5) };
            if (surface.TryMeet(rays.Pupil, rays.Through(right, up), out var place))
            {
                outline.Add(new PanelPlace(Length.FromMeters(place.X), Length.FromMeters(place.S)));
            }
        }

        return [.. outline];
    }

    private static double Share(PanelSurface surface, ViewRays rays)
    {
        var met = 0;
        for (var i = 0; i < Samples * Samples; i++)
        {
            var (row, column) = Math.DivRem(i, Samples);
            var ray = rays.Through(((double)column / (Samples - 1)) - 0.5, ((double)row / (Samples - 1)) - 0.5);
            met += surface.TryMeet(rays.Pupil, ray, out _) ? 1 : 0;
        }

        return (double)met / (Samples * Samples);
    }
}
