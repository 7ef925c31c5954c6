using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>A frame's clips as they are measured off from the panel's edges.</summary>
internal static class EdgeClips
{
    // Clips nearer than this in depth grip one rail.
    private const double Same = 1e-5;

    /// <summary>The clips along the front edge, from the left.</summary>
    /// <remarks>The frame counts from under the middle of the panel's flat part.</remarks>
    public static IReadOnlyList<EdgeClip> Front(PanelPlan panel, FrameResult frame)
    {
        var front = frame.Ledge.ClipPoints.Min(point => point.Back);
        return [.. frame.Ledge.ClipPoints.Where(point => Math.Abs(point.Back - front) < Same).OrderBy(point => point.Right).Select(point => new EdgeClip(
            (panel.Width / 2) + Length.FromMeters(point.Right), (panel.FlatDepth / 2) + Length.FromMeters(front)))];
    }
}
