using StudioKit.Kits;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>Focus stack for a subject deeper than one frame holds.</summary>
internal static class StackPlanner
{
    // Nobody takes more frames of a living thing; deeper ones are left without a stack (common practice, no source).
    private const double MostSlices = 2000;

    // Turning the rail and letting it settle (common practice, no source).
    private static readonly Duration TurnAndSettle = Duration.FromSeconds(2);

    /// <summary>Frames, step, time and flashes; none where it would take thousands of frames.</summary>
    public static FocusStackResult? Plan(KitSpec kit, Length subjectDepth, Length depthOfField, ExposedWith exposed) =>
        subjectDepth / depthOfField > MostSlices
            ? null
            : FocusStack.Plan(new FocusStackCase
            {
                Depth = subjectDepth,
                DepthOfField = depthOfField,
                RailPitch = kit.Accessories.RailPitch,
                FrameInterval = exposed.RecycleTime is { } recycle && recycle > TurnAndSettle ? recycle : TurnAndSettle,
                FlashesPerFrame = exposed.Flashes,
            });
}
