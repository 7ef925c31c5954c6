namespace StudioKit.Physics.Structure.Frames.Layout;

/// <summary>A cradle that was asked for, and whether it can be had.</summary>
/// <param name="Asked">What was asked for.</param>
/// <param name="At">Where its tee sits, or would.</param>
/// <param name="Fault">Why it cannot be had; none where it can.</param>
internal sealed record PlacedCradle(FlashCradleCase Asked, FramePoint At, CradleFault? Fault)
{
    /// <summary>The bright window over the tee.</summary>
    public FramePoint Window => At with { Up = At.Up + Asked.StandOff.Meters };
}
