using StudioKit.Physics.Exposure;
using StudioKit.Planning.Advising;

namespace StudioKit.Field.Advice;

/// <summary>What a test frame is held against.</summary>
public sealed record FrameLimits
{
    /// <summary>How much the veil may lift a mid-tone.</summary>
    public Stops VeilLimit { get; init; } = new(0.7);

    /// <summary>Veiling glare index of camera and lens [1].</summary>
    public double GlareIndex { get; init; } = 0.02;

    /// <summary>The flash below; none where nothing is known of it.</summary>
    public BeneathFlash? Flash { get; init; }

    /// <summary>What a plan makes of the frame; none where there is no plan.</summary>
    public FrameAdvice? Planned { get; init; }
}
