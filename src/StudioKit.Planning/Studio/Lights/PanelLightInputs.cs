using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Planning.Framing;

namespace StudioKit.Planning.Studio.Lights;

/// <summary>What the light on the panel, as the framings of one set-up see it, follows from.</summary>
/// <param name="Kit">What of the kit counts, with that set-up alone.</param>
/// <param name="Panel">The panel.</param>
/// <param name="Frame">The frame.</param>
/// <param name="Light">The studio's light.</param>
/// <param name="Framings">The framings.</param>
/// <param name="Exposures">The set-up's exposures.</param>
internal sealed record PanelLightInputs(
    KitSpec Kit, PanelPlan Panel, FramePlan? Frame, StudioLight Light, IReadOnlyList<PlannedFraming> Framings, ValueList<ExposurePlan> Exposures)
{
    /// <summary>The plan.</summary>
    public static PanelLightPlan Plan(PanelLightInputs of) =>
        new PanelLightPlanner(of.Kit, of.Panel, of.Light, of.Frame?.Geometry).Of(of.Kit.SetUps[0], of.Framings, of.Exposures);

    /// <summary>The plan of the upright sheet of the set-up, which neither panel nor frame changes.</summary>
    public static UprightLightPlan PlanUpright(PanelLightInputs of) => UprightLightPlanner.Of(of.Kit, of.Kit.SetUps[0], of.Light, of.Framings, of.Exposures);
}
