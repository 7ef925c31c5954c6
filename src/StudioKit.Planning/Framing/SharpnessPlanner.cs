using StudioKit.Kits;
using StudioKit.Kits.Cameras;
using StudioKit.Kits.Subjects;
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
    /// <param name="exposed">Settings and light.</param>
    /// <param name="subject">The subject that it is for; none where none fits the frame.</param>
    public static SharpnessPlan Plan(KitSpec kit, PlannedFraming framing, ExposedWith exposed, SubjectSpec? subject)
    {
        var stack = At(framing, exposed.Aperture);
        var effective = stack.EffectiveFNumber.Value;
        var m = framing.Plan.Magnification.Value;
        var circle = CircleOf(kit.Camera);
        var zone = DepthOfField.Of(stack, circle);
        var total = Length.FromMeters(DepthOfField.CloseUpTotal(m, effective, circle.Meters));
        var pitch = PixelScale.PixelPitch(kit.Camera.SensorWidth.Meters, kit.Camera.PixelsWide);
        var motion = Motion(kit, framing, exposed, subject, Length.FromMeters(pitch));
        var pixel = Length.FromMeters(PixelScale.AtSubject(pitch, m));
        var smear = pixel * motion.TakenAwayPixels;
        var still = PixelScale.FinestDetail(pitch, m, effective);
        var slices = subject is null ? null : StackPlanner.Plan(kit, DepthOf(subject), total, exposed);
        var ends = subject is null ? null : SharpnessCurves.BlurOver(framing, exposed.Aperture, DepthOf(subject));
        return new SharpnessPlan
        {
            DepthOfField = total,
            DepthBefore = zone.Near,
            DepthBehind = zone.Far,
            CircleOfConfusion = circle,
            AiryDisc = Length.FromMeters(Diffraction.AiryDiscDiameter(effective)),
            AiryDiscAtSubject = Length.FromMeters(Diffraction.AiryDiscDiameter(effective) / m),
            RayleighSeparation = Length.FromMeters(Diffraction.RayleighSeparation(effective) / m),
            FinestDetail = Length.FromMeters(PixelScale.DetailWithSmear(still, smear.Meters)),
            StillDetail = Length.FromMeters(still),
            PixelAtSubject = pixel,
            NearestBlur = Smeared(ends?.Nearest, smear),
            FarthestBlur = Smeared(ends?.Farthest, smear),
            Smear = motion,
            SmearLimit = circle.Meters / pitch,
            SharpestAperture = subject is null ? null : Sharpest(framing, subject),
            ForSubject = subject?.Name,
            StackFrames = slices?.Frames,
            StackStep = slices is { Frames: > 1 } ? slices.Step : null,
            StackTurnsPerStep = slices is { Frames: > 1 } ? slices.TurnsPerStep : null,
            StackTime = slices is { Frames: > 1 } ? slices.Time : null,
            StackFlashes = slices is { Frames: > 1 } ? slices.Flashes : null,
        };
    }

    /// <summary>Smear that takes detail away, and the smear that still passes for sharp, in pixels [1].</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="framing">The framing.</param>
    /// <param name="exposed">Settings and light.</param>
    /// <param name="subject">The subject that it is for; none where none fits the frame.</param>
    public static (double Pixels, double Limit) SmearOf(KitSpec kit, PlannedFraming framing, ExposedWith exposed, SubjectSpec? subject)
    {
        var pitch = Length.FromMeters(PixelScale.PixelPitch(kit.Camera.SensorWidth.Meters, kit.Camera.PixelsWide));
        return (Motion(kit, framing, exposed, subject, pitch).TakenAwayPixels, CircleOf(kit.Camera) / pitch);
    }

    /// <summary>Sharpest marked f-number over a subject's depth.</summary>
    public static FNumber Sharpest(PlannedFraming framing, SubjectSpec subject) =>
        BestAperture.Marked(framing.Stack, FramingPlanner.AnyAperture, LensOf(framing.Lens), DepthOf(subject));

    /// <summary>The focused stack at another aperture.</summary>
    public static OpticalStackResult At(PlannedFraming framing, FNumber aperture) =>
        framing.Stack with { EffectiveFNumber = new FNumber(aperture.Value * framing.Plan.EffectiveApertureFactor) };

    /// <summary>Blur on the sensor that passes for sharp.</summary>
    public static Length CircleOf(CameraSpec camera) => camera.CircleOfConfusion
        ?? Length.FromMeters(CircleOfConfusion.FromDiagonal(camera.SensorWidth.Meters, camera.SensorHeight.Meters));

    /// <summary>Depth that must be sharp: the kit's own, or half the height that it gives or that goes with the length.</summary>
    public static Length DepthOf(SubjectSpec subject) => subject.Depth ?? (HeightOf(subject) / 2);

    /// <summary>Height above the panel: the kit's own, or a third of the length.</summary>
    public static Length HeightOf(SubjectSpec subject) => subject.Height ?? (subject.Length / 3);

    private static Length? Smeared(Length? still, Length smear) =>
        still is { } blur ? Length.FromMeters(Blur.Combined(blur.Meters, smear.Meters)) : null;

    private static MotionBlurResult Motion(KitSpec kit, PlannedFraming framing, ExposedWith exposed, SubjectSpec? subject, Length pitch) =>
        MotionBlur.InPixels(new MotionBlurCase
        {
            Magnification = framing.Plan.Magnification,
            PixelPitch = pitch,
            SubjectSpeed = subject?.Speed ?? Speed.Zero,
            HandSpeed = exposed.Sway,
            FlashDuration = exposed.FlashDuration ?? Duration.Zero,
            Shutter = exposed.Shutter,
            AmbientShare = exposed.AmbientShare,
        });

    private static LensOptics LensOf(LensSpec lens) => new()
    {
        FocalLength = lens.FocalLength,
        PupilRatio = lens.PupilRatio,
        WidestAperture = lens.WidestAperture,
        SmallestAperture = lens.SmallestAperture,
    };
}
