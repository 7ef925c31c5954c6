using StudioKit.Physics.Sources;
using UnitsNet;

namespace StudioKit.Physics.Optics;

/// <summary>Frames focused one behind another, later merged into a picture sharp all through.</summary>
public static class FocusStack
{
    private const double MostFrames = 100_000;

    /// <summary>Number of frames, step of the rail, time and flashes.</summary>
    /// <param name="stack">Subject, depth of field and overlap.</param>
    /// <returns>The plan; one frame when the depth of field covers the subject.</returns>
    /// <remarks>
    /// Step = DoF·(1 − overlap). Frames = ⌈(depth − DoF)/step⌉ + 1 with the outer frames half a slice inside the subject, or ⌈depth/step⌉ + 1 with
    /// them on its end planes. The step is then evened out over the travel.
    /// </remarks>
    /// <exception cref="ArgumentOutOfRangeException">A field is outside its range, or the stack would take more than 100 000 frames.</exception>
    [Source("PhotomacrographyForum", "thread 43953: step 0.7 of the depth of field")]
    public static FocusStackResult Plan(FocusStackCase stack)
    {
        ArgumentNullException.ThrowIfNull(stack);
        var depth = Guard.NonNegative(stack.Depth.Meters, nameof(FocusStackCase.Depth));
        var slice = Guard.Positive(stack.DepthOfField.Meters, nameof(FocusStackCase.DepthOfField));
        var largestStep = Guard.Positive(
            slice * (1 - Guard.Between(stack.Overlap, 0, 1, nameof(FocusStackCase.Overlap))), nameof(FocusStackCase.Overlap));
        var travel = depth <= slice ? 0 : depth - (stack.FocusOnEndPlanes ? 0 : slice);
        var steps = StepsOver(travel, largestStep);
        var step = steps > 0 ? travel / steps : 0;
        return new FocusStackResult(
            steps + 1,
            Length.FromMeters(largestStep),
            Length.FromMeters(step),
            Length.FromMeters(travel),
            stack.RailPitch is { } pitch ? step / Guard.Positive(pitch.Meters, nameof(FocusStackCase.RailPitch)) : null,
            Duration.FromSeconds(Guard.NonNegative(stack.FrameInterval.Seconds, nameof(FocusStackCase.FrameInterval)) * steps),
            (steps + 1) * (int)Guard.NonNegative(stack.FlashesPerFrame, nameof(FocusStackCase.FlashesPerFrame)));
    }

    private static int StepsOver(double travel, double largestStep)
    {
        // A whole number of steps must not become one more by the last bit of a division.
        var steps = Math.Ceiling((travel / largestStep) - 1e-9);
        return (int)Guard.Between(steps, 0, MostFrames, nameof(FocusStackCase.Depth));
    }
}
