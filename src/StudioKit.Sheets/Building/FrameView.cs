using StudioKit.Physics.Structure.Frames;
using StudioKit.Sheets.Drawings;

namespace StudioKit.Sheets.Building;

/// <summary>A direction to look at a frame from.</summary>
/// <param name="Name">What the view is called.</param>
/// <param name="Project">Place on the drawing at full size [mm].</param>
/// <param name="Nearness">How near a point is to the eye; more is nearer [mm].</param>
internal sealed record FrameView(string Name, Func<FramePoint, Point> Project, Func<FramePoint, double> Nearness)
{
    public static FrameView Plan { get; } = new("Plan view", point => InMillimetres(point.Right, -point.Back), point => 1000 * point.Up);

    public static FrameView Front { get; } = new("Front view", point => InMillimetres(point.Right, -point.Up), point => -1000 * point.Back);

    public static FrameView Side { get; } = new("Side view from the right", point => InMillimetres(point.Back, -point.Up), point => 1000 * point.Right);

    /// <summary>All three axes at 30° or upright and drawn at one scale, as ISO 5456-3 has it; seen from the front, the right and above.</summary>
    public static FrameView Isometric { get; } = new(
        "Exploded view",
        point => InMillimetres((point.Right + point.Back) * Math.Sqrt(3) / 2, ((point.Right - point.Back) / 2) - point.Up),
        point => 1000 * (point.Right - point.Back + point.Up));

    private static Point InMillimetres(double x, double y) => new(1000 * x, 1000 * y);
}
