using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Frames;

/// <summary>The arc that a swept table's sheet follows.</summary>
internal static class SheetSweeps
{
    private const int Steps = 24;

    /// <summary>The sweep; none for a flat sheet.</summary>
    public static SheetSweep? Of(PanelPlan panel, FrameResult frame)
    {
        if (frame.Shape != FrameShape.SweptTable || panel.SweepRadius is not { } radius)
        {
            return null;
        }

        var angle = Angle.FromRadians((frame.SheetLength - panel.FlatDepth) / radius);
        var topRail = Length.FromMeters(frame.Joints.Max(joint => joint.Position.Up));
        return new SheetSweep(radius, angle, topRail, [.. Enumerable.Range(0, Steps + 1).Select(i => At(panel, frame, radius.Meters, angle.Radians * i / Steps))]);
    }

    // The frame counts from under the middle of the flat part.
    private static FramePoint At(PanelPlan panel, FrameResult frame, double radius, double angle) =>
        new(0, (panel.FlatDepth.Meters / 2) + (radius * Math.Sin(angle)), frame.PanelHeight.Meters + (radius * (1 - Math.Cos(angle))));
}
