using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
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

    /// <summary>Diameter of the Airy disc at the subject: as wide as diffraction spreads a point to its first dark ring.</summary>
    public Length AiryDiscAtSubject { get; init; }

    /// <summary>Least distance at the subject at which diffraction leaves two points apart, by Rayleigh's criterion: half the Airy disc.</summary>
    public Length RayleighSeparation { get; init; }

    /// <summary>Finest detail told apart in the focused plane, smear and all; <see cref="StillDetail"/> and the smear in quadrature.</summary>
    public required Length FinestDetail { get; init; }

    /// <summary>Finest detail told apart in the focused plane if nothing moved: the larger of two pixels and <see cref="RayleighSeparation"/>.</summary>
    public Length StillDetail { get; init; }

    /// <summary>Size of a pixel at the subject.</summary>
    public required Length PixelAtSubject { get; init; }

    /// <summary>
    /// Defocus, diffraction and smear together at the subject's point nearest the camera, as wide as it looks at the subject; none without a subject.
    /// </summary>
    public Length? NearestBlur { get; init; }

    /// <summary>The same at its farthest point.</summary>
    public Length? FarthestBlur { get; init; }

    /// <summary>Smear by hand, subject and flash, whether the shutter is the kit's or the plan's; each with its share of the light.</summary>
    public required MotionBlurResult Smear { get; init; }

    /// <summary>Smear that takes detail away, each cause by its share of the light [pixels]; the faint ghost of little light does not.</summary>
    public double SmearPixels => Smear.TakenAwayPixels;

    /// <summary>The same, as long as it is at the subject.</summary>
    public Length SmearAtSubject => AtSubject(SmearPixels);

    /// <summary>Smear that still passes for sharp: as long as the circle of confusion is wide [pixels].</summary>
    public required double SmearLimit { get; init; }

    /// <summary>The cause that smears most, where smear exceeds what passes for sharp; none where the picture is steady enough.</summary>
    public MotionBlurKind? SmearRules => SmearPixels > SmearLimit ? Smear.Largest.Kind : null;

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

    /// <summary>How long a number of pixels is at the subject.</summary>
    /// <param name="pixels">Number of pixels [1].</param>
    public Length AtSubject(double pixels) => PixelAtSubject * pixels;
}
