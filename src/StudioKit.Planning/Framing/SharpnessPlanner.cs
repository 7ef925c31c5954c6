using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using UnitsNet;

namespace StudioKit.Planning.Framing;

/// <summary>How sharp a framing is at an aperture, and over a subject.</summary>
internal static class SharpnessPlanner
{
    /// <summary>Depth, diffraction, blur and stack for one exposure.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="framing">The framing.</param>
    /// <param name="aperture">f-number to set.</param>
    /// <param name="shutter">Shutter speed to set.</param>
    /// <param name="flashDuration">Longest flash duration at work; none without a flash.</param>
    /// <param name="ambientShare">Share of ambient light in the exposure [1]; 0 to 1.</param>
    /// <param name="subject">The subject that it is for; none where the set-up names none.</param>
    public static SharpnessPlan Plan(
        KitSpec kit, PlannedFraming framing, FNumber aperture, ShutterSpeed shutter, Duration? flashDuration, double ambientShare, SubjectSpec? subject)
    {
        var effective = aperture.Value * framing.Plan.EffectiveApertureFactor;
        var m = framing.Plan.Magnification.Value;
        var circle = kit.Camera.CircleOfConfusion?.Meters
            ?? CircleOfConfusion.FromDiagonal(kit.Camera.SensorWidth.Meters, kit.Camera.SensorHeight.Meters);
        var depth = Length.FromMeters(DepthOfField.CloseUpTotal(m, effective, circle));
        var pitch = PixelScale.PixelPitch(kit.Camera.SensorWidth.Meters, kit.Camera.PixelsWide);
        var motion = MotionBlur.InPixels(new MotionBlurCase
        {
            Magnification = framing.Plan.Magnification,
            PixelPitch = Length.FromMeters(pitch),
            SubjectSpeed = subject?.Speed ?? Speed.Zero,
            HandSpeed = kit.Site.HandSpeed,
            FlashDuration = flashDuration ?? Duration.Zero,
            Shutter = shutter,
            AmbientShare = ambientShare,
        });
        var stack = subject is null ? null : FocusStack.Plan(new FocusStackCase { Depth = DepthOf(subject), DepthOfField = depth });
        return new SharpnessPlan
        {
            DepthOfField = depth,
            CircleOfConfusion = Length.FromMeters(circle),
            AiryDisc = Length.FromMeters(Diffraction.AiryDiscDiameter(effective)),
            FinestDetail = Length.FromMeters(PixelScale.FinestDetail(pitch, m, effective)),
            PixelAtSubject = Length.FromMeters(PixelScale.AtSubject(pitch, m)),
            FlashBlurPixels = flashDuration is null ? null : motion.FlashPixels,
            AmbientBlurPixels = motion.AmbientPixels,
            SharpestAperture = subject is null ? null : Sharpest(framing, subject),
            ForSubject = subject?.Name,
            StackFrames = stack?.Frames,
            StackStep = stack is { Frames: > 1 } ? stack.Step : null,
        };
    }

    /// <summary>Sharpest marked f-number over a subject's depth.</summary>
    public static FNumber Sharpest(PlannedFraming framing, SubjectSpec subject) =>
        BestAperture.Marked(framing.Stack, new FNumber(16), LensOf(framing.Lens), DepthOf(subject));

    /// <summary>Depth that must be sharp: the kit's own, or half the height that it gives or that goes with the length.</summary>
    public static Length DepthOf(SubjectSpec subject) => subject.Depth ?? (HeightOf(subject) / 2);

    /// <summary>Height above the panel: the kit's own, or a third of the length.</summary>
    public static Length HeightOf(SubjectSpec subject) => subject.Height ?? (subject.Length / 3);

    private static LensOptics LensOf(LensSpec lens) => new()
    {
        FocalLength = lens.FocalLength,
        PupilRatio = lens.PupilRatio,
        WidestAperture = lens.WidestAperture,
        SmallestAperture = lens.SmallestAperture,
    };
}
