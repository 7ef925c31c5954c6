using StudioKit.Physics.Exposure;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>How sharp a framing is at the aperture chosen.</summary>
public sealed record SharpnessPlan
{
    /// <summary>Depth of field, near to far limit.</summary>
    public required Length DepthOfField { get; init; }

    /// <summary>Part of it before the focused plane, towards the camera.</summary>
    public Length DepthBefore { get; init; }

    /// <summary>Part of it behind the focused plane; none where it has no end.</summary>
    public Length? DepthBehind { get; init; }

    /// <summary>Greatest blur spot that passes for sharp, at the sensor.</summary>
    public required Length CircleOfConfusion { get; init; }

    /// <summary>Diameter of the Airy disc at the sensor.</summary>
    public required Length AiryDisc { get; init; }

    /// <summary>Finest detail resolved at the subject.</summary>
    public required Length FinestDetail { get; init; }

    /// <summary>Size of a pixel at the subject.</summary>
    public required Length PixelAtSubject { get; init; }

    /// <summary>
    /// Defocus and diffraction together at the subject's point nearest the camera, as wide as it looks at the subject; none without a subject.
    /// </summary>
    public Length? NearestBlur { get; init; }

    /// <summary>The same at its farthest point.</summary>
    public Length? FarthestBlur { get; init; }

    /// <summary>Blur by a moving subject and hand during the flash [pixels].</summary>
    public double? FlashBlurPixels { get; init; }

    /// <summary>Blur of the ambient part of the light during the shutter time [pixels].</summary>
    public double? AmbientBlurPixels { get; init; }

    /// <summary>Sharpest marked f-number over the depth of the subject named; none where the set-up names no subject.</summary>
    public FNumber? SharpestAperture { get; init; }

    /// <summary>The subject that <see cref="SharpestAperture"/> is for.</summary>
    public string? ForSubject { get; init; }

    /// <summary>Frames of a focus stack over that subject's depth [1]; 1 where a single frame does.</summary>
    public int? StackFrames { get; init; }

    /// <summary>Step between those frames.</summary>
    public Length? StackStep { get; init; }

    /// <summary>Turns of the focusing rail for that step [1]; none without a stack or a rail.</summary>
    public double? StackTurnsPerStep { get; init; }

    /// <summary>Time from first to last frame; none without a stack.</summary>
    public Duration? StackTime { get; init; }

    /// <summary>Flashes fired for all frames, every flash counted [1]; none without a stack.</summary>
    public int? StackFlashes { get; init; }
}
