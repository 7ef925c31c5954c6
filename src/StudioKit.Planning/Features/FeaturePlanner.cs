using StudioKit.Kits;
using StudioKit.Kits.Subjects;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Features;

/// <summary>Features of subjects × exposures → resolved or not.</summary>
internal static class FeaturePlanner
{
    // Nobody takes more frames of a living thing (common practice, no source).
    private const double MostFrames = 2000;

    // The finest is looked for so many doublings either way of the feature itself.
    private const int Doublings = 10;

    /// <summary>Every feature in every exposure of its subject, whether that is shown whole or in part.</summary>
    public static ValueList<FeaturePlan> Of(KitSpec kit, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        var reach = new LensReach(kit);
        return [.. exposures.SelectMany(exposure => exposure.FeatureSmears.Select(smear => Of(
            new Seen(kit, framings.First(framing => framing.Plan.Name == exposure.Framing.Name), exposure, kit.Subjects.First(subject => subject.Name == smear.Subject), smear.AtSubject), reach)))];
    }

    private static FeaturePlan Of(Seen seen, LensReach reach)
    {
        var (feature, exposure) = (seen.Subject.Feature!, seen.Exposure);
        var here = seen.Case;
        var result = FeatureResolution.Of(here);
        var frames = FramesOver(feature.Relief, result.Depth);
        return new FeaturePlan
        {
            SetUp = exposure.SetUp,
            Framing = exposure.Framing.Name,
            Subject = seen.Subject.Name,
            ShownWhole = exposure.Subjects.Contains(seen.Subject.Name),
            Feature = feature.Name,
            Period = feature.Period,
            Size = feature.Size,
            Relief = feature.Relief,
            Contrast = result.Contrast,
            Depth = result.Depth,
            Frames = frames,
            Limit = !result.ResolvedInFocus ? result.InFocusLimit : frames == 1 ? null : FeatureLimit.Defocus,
            Finest = Finest(here),
            LowestMagnification = reach.Lowest(seen.Framing, other => IsResolved((seen with { Framing = other }).Case)),
            WidestAperture = Widest(seen.Framing, here, feature.Relief),
        };
    }

    private static bool IsResolved(FeatureCase seen) => FeatureResolution.ContrastInFocus(seen) >= FeatureResolution.RayleighContrast;

    /// <summary>A subject's feature as an exposure sees it.</summary>
    private sealed record Seen(KitSpec Kit, PlannedFraming Framing, ExposurePlan Exposure, SubjectSpec Subject, Length Smear)
    {
        public FeatureCase Case => new()
        {
            Spacing = Subject.Feature!.Period,
            Contrast = Subject.Feature.Contrast,
            Magnification = Framing.Plan.Magnification,
            EffectiveFNumber = SharpnessPlanner.At(Framing, Exposure.Aperture).EffectiveFNumber.Value,
            PixelPitch = Length.FromMeters(PixelScale.PixelPitch(Kit.Camera.SensorWidth.Meters, Kit.Camera.PixelsWide)),
            Smear = Smear,
            PupilVergence = Framing.Stack.SubjectToEntrancePupil is { } pupil && pupil > Length.Zero ? 1 / pupil.Meters : 0,
        };
    }

    private static int? FramesOver(Length relief, Length? depth) => depth is not { } one || relief / one > MostFrames
        ? null
        : FocusStack.Plan(new FocusStackCase { Depth = relief, DepthOfField = one }).Frames;

    private static Length Finest(FeatureCase seen)
    {
        var (low, high) = (-(double)Doublings, (double)Doublings);
        while (high - low > 1e-4)
        {
            var middle = (low + high) / 2;
            (low, high) = IsResolved(At(middle)) ? (low, middle) : (middle, high);
        }

        return At(high).Spacing;

        FeatureCase At(double doublings) => seen with { Spacing = seen.Spacing * Math.Pow(2, doublings) };
    }

    private static FNumber? Widest(PlannedFraming framing, FeatureCase seen, Length relief) => SharpnessCurves.Marks(framing.Lens)
        .Cast<FNumber?>()
        .FirstOrDefault(mark => FeatureResolution.IsResolvedOver(seen with { EffectiveFNumber = SharpnessPlanner.At(framing, mark!.Value).EffectiveFNumber.Value }, relief));
}
