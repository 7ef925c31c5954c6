using StudioKit.Physics.Structure.Frames;
using UnitsNet;

namespace StudioKit.Planning.Studio.Uprights;

/// <summary>Where a table's back holds the poles of an upright sheet: on its back rail, and on a bar across its back legs.</summary>
/// <param name="RailHeight">Middle of the back rail over the ground.</param>
/// <param name="BarHeight">Middle of the bar over the ground.</param>
/// <param name="BarLength">The bar from end to end.</param>
/// <param name="PanelOverRail">Middle of the back rail to the top of the panel.</param>
internal sealed record FrameHold(Length RailHeight, Length BarHeight, Length BarLength, Length PanelOverRail)
{
    // Over the fittings of the feet (common practice, no source).
    private static readonly Length OverFoot = Length.FromMillimeters(60);

    // Beyond the outside of either leg, for the clips (common practice, no source).
    private static readonly Length BeyondLeg = Length.FromMillimeters(20);

    /// <summary>Rail down to bar.</summary>
    public Length RailToBar => RailHeight - BarHeight;

    /// <summary>Where a frame's back holds poles; none where it has no legs.</summary>
    public static FrameHold? Of(FrameResult frame, Length diameter, Length panelThickness)
    {
        if (frame.Feet.Count == 0)
        {
            return null;
        }

        var back = frame.Joints.Max(joint => joint.Position.Back);
        var joints = frame.Joints.Where(joint => back - joint.Position.Back < 1e-6).Select(joint => joint.Position).ToList();
        var (top, foot) = (joints.Max(joint => joint.Up), joints.Min(joint => joint.Up));
        return new FrameHold(
            Length.FromMeters(top),
            Length.FromMeters(Math.Min(foot + OverFoot.Meters, (foot + top) / 2)),
            Length.FromMeters(joints.Max(joint => joint.Right) - joints.Min(joint => joint.Right)) + diameter + (2 * BeyondLeg),
            frame.PanelHeight + panelThickness - Length.FromMeters(top));
    }
}
