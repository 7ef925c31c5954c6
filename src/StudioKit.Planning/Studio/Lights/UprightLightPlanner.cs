using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Planning.Framing;
using UnitsNet;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Light maps and planned powers → what each framing sees of an upright sheet.</summary>
internal static class UprightLightPlanner
{
    private const string Grounds = "The ground under the sheet counts as level and evenly matt, as far to both sides as behind; the poles, and light of the place on the sheet, are left out: they make it no darker where the camera looks.";

    /// <summary>Plans one set-up that has an upright sheet, from its exposures.</summary>
    public static UprightLightPlan Of(KitSpec kit, SetUpSpec setUp, StudioLight light, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        var (upright, lit) = (kit.UprightOf(setUp)!, light.UprightOf(setUp)!);
        var section = new UprightSection(upright, setUp, lit.Scene.Panel);
        var lights = setUp.LightsOf(LightRole.Behind).Zip(lit.Scene.Emitters).ToList();
        return new UprightLightPlan
        {
            FromSubject = setUp.BackgroundDistance,
            OnPanel = !setUp.IsBeforeUpright,
            Flashes = [.. lights.Select(pair => section.FlashAt(pair.First, pair.Second))],
            Sheet = new PanelLightPlan
            {
                SetUp = setUp.Name,
                Upright = upright.Name,
                Problems = light.UprightProblemsOf(setUp, framings),
                PanelWidth = lit.Scene.Panel.Width,
                PanelDepth = lit.Scene.Panel.Depth,
                SweptLength = Length.Zero,
                PanelHeight = section.Upper.Up,
                Skirts = false,
                SubjectFromFront = UprightScene.Aim(kit, upright, setUp),
                TargetMargin = setUp.TargetWhiteMargin,
                Flashes = [.. lights.Select(pair => section.OnItsBack(kit, pair.First, pair.Second))],
                Framings = lit.Map is null ? [] : [.. exposures.Select(Seen).OfType<FramingLightPlan>()],
                Section = new StudioSection([section.Lower, section.Upper], []),
                Caveats = [Grounds],
            },
        };

        FramingLightPlan? Seen(ExposurePlan exposure)
        {
            var framing = framings.First(candidate => candidate.Plan.Name == exposure.Framing.Name);
            return FramingLights.Of(exposure, LightRole.Behind, light.SeenUpright(setUp, framing, FramingLights.Camera(kit, setUp, framing, exposure)), section.Sight);
        }
    }
}
