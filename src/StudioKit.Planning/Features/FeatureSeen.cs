using StudioKit.Kits;
using StudioKit.Kits.Subjects;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Features;

/// <summary>A subject's feature as an exposure sees it.</summary>
/// <param name="Kit">The kit.</param>
/// <param name="Framing">The framing.</param>
/// <param name="Exposure">The exposure.</param>
/// <param name="Subject">The subject, which names a feature.</param>
/// <param name="Smear">Smear of the subject, as long as it is there.</param>
internal sealed record FeatureSeen(KitSpec Kit, PlannedFraming Framing, ExposurePlan Exposure, SubjectSpec Subject, Length Smear)
{
    /// <summary>The feature.</summary>
    public FeatureSpec Feature => Subject.Feature!;

    /// <summary>What its resolution is worked out from.</summary>
    public FeatureCase Case => new()
    {
        Spacing = Feature.Period,
        Contrast = Feature.Contrast,
        Magnification = Framing.Plan.Magnification,
        EffectiveFNumber = SharpnessPlanner.At(Framing, Exposure.Aperture).EffectiveFNumber.Value,
        PixelPitch = Length.FromMeters(PixelScale.PixelPitch(Kit.Camera.SensorWidth.Meters, Kit.Camera.PixelsWide)),
        Smear = Smear,
        PupilVergence = Framing.Stack.SubjectToEntrancePupil is { } pupil && pupil > Length.Zero ? 1 / pupil.Meters : 0,
    };
}
