using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics.Light.Covers;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Framing;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>Light maps and planned powers → what each framing sees of the lit panel.</summary>
internal sealed class PanelLightPlanner(KitSpec kit, PanelPlan panel, StudioLight light, FrameResult? frame)
{
    private const string MatSurfaces =
        "Skirts, ground and the sheet's underside count as evenly matt, pipes and flash bodies as black: a white frame makes the shadows of its pipes shallower than shown.";

    private const string TwoBelow = "Flashes below are all set to the same power.";

    /// <summary>Plans one set-up that lights the panel, from its exposures.</summary>
    public PanelLightPlan Of(SetUpSpec setUp, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        var scene = light.Of(setUp).Scene;
        var section = new SectionPlanner(kit, panel, scene.Panel, frame);
        return new PanelLightPlan
        {
            SetUp = setUp.Name,
            Problems = light.ProblemsOf(setUp, framings),
            PanelWidth = panel.Width,
            PanelDepth = panel.Depth,
            SweptLength = panel.SweptLength,
            PanelHeight = scene.Panel.Height,
            Skirts = kit.Panel.Skirts,
            SubjectFromFront = panel.SubjectFromFront,
            TargetMargin = setUp.TargetWhiteMargin,
            Flashes = [.. PanelScene.Below(setUp).Zip(scene.Emitters, section.FlashAt)],
            Covered = CoveredStrips.Of(scene),
            Foot = kit.CoverOf(setUp) is { } cover
                ? new CoverFoot(cover.Name, cover.Case.OuterWidth, cover.Case.OuterDepth, cover.Shape is CoverShape.RoundTub or CoverShape.Dome)
                : null,
            Framings = light.Of(setUp).Map is not null
                ? [.. exposures.Select(exposure => Of(setUp, framings.First(framing => framing.Plan.Name == exposure.Framing.Name), exposure, section)).OfType<FramingLightPlan>()]
                : [],
            Section = section.Section,
            Caveats = scene.Emitters.Count > 1 ? [MatSurfaces, TwoBelow] : [MatSurfaces],
        };
    }

    private FramingLightPlan? Of(SetUpSpec setUp, PlannedFraming framing, ExposurePlan exposure, SectionPlanner section) => FramingLights.Of(
        exposure, LightRole.Below, light.Seen(setUp, framing, FramingLights.Camera(kit, setUp, framing, exposure)), section.Sight);
}
