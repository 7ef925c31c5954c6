using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Planning.Framing;

namespace StudioKit.Planning.Features;

/// <summary>Features of subjects × exposures → resolved or not.</summary>
internal static class FeaturePlanner
{
    /// <summary>Every feature in every exposure of its subject, whether that is shown whole or in part.</summary>
    public static ValueList<FeaturePlan> Of(KitSpec kit, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        var reach = new LensReach(kit);
        return [.. exposures.SelectMany(exposure => exposure.FeatureSmears.Select(smear => new FeaturePlan(
            new FeatureSeen(kit, framings.First(framing => framing.Plan.Name == exposure.Framing.Name), exposure, kit.Subjects.First(subject => subject.Name == smear.Subject), smear.AtSubject), reach)))];
    }
}
