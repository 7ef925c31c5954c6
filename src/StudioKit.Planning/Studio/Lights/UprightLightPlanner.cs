using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Light maps and planned powers → what each framing sees of an upright sheet.</summary>
internal static class UprightLightPlanner
{
    /// <summary>Plans one set-up that has an upright sheet, from its exposures.</summary>
    public static UprightLightPlan Of(KitSpec kit, SetUpSpec setUp, StudioLight light, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        var (upright, lit) = (kit.UprightOf(setUp)!, light.UprightOf(setUp)!);
        var section = new UprightSection(upright, setUp, lit.Scene.Panel);
        return new UprightLightPlan
        {
            SetUp = setUp.Name,
            Upright = upright.Name,
            Problems = [.. light.UprightProblemsOf(setUp, framings)],
            Width = lit.Scene.Panel.Width,
            Height = lit.Scene.Panel.Depth,
            Edges = section.Edges,
            SubjectFoot = UprightPlacing.Ground(setUp),
            TargetMargin = setUp.TargetWhiteMargin,
            Flashes = [.. setUp.LightsOf(LightRole.Behind).Zip(lit.Scene.Emitters, section.FlashAt)],
            Framings = lit.Map is null ? [] : [.. exposures.Select(Seen).OfType<FramingLightPlan>()],
        };

        FramingLightPlan? Seen(ExposurePlan exposure)
        {
            var framing = framings.First(candidate => candidate.Plan.Name == exposure.Framing.Name);
            return FramingLights.Of(exposure, LightRole.Behind, light.SeenUpright(setUp, framing, FramingLights.Camera(kit, setUp, framing, exposure)), section.Sight);
        }
    }
}
