using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Features;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Session;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.Standing;
using StudioKit.Planning.Studio.Frames;
using StudioKit.Planning.Studio.Lights;
using StudioKit.Planning.Studio.Panels;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning;

/// <summary>The stages of a plan, each a pure step: the same kit and the same earlier results give the same result.</summary>
/// <remarks>
/// <see cref="KitSlice"/> says which parts of the kit a step looks at; <see cref="PlanSession"/> hands a step no more than that, and keeps what came of it.
/// </remarks>
public static class PlanStages
{
    /// <summary>Every lens combination at every magnification that the kit asks for.</summary>
    /// <param name="kit">The kit.</param>
    /// <returns>The framings, smallest magnification first.</returns>
    public static IReadOnlyList<PlannedFraming> Framings(KitSpec kit) => FramingPlanner.Plan(kit);

    /// <summary>The sheet that fills every frame of the set-ups that stand on it.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="framings">Its framings.</param>
    /// <returns>The panel; of no size where no set-up uses it and the kit gives none.</returns>
    public static PanelPlan Panel(KitSpec kit, IReadOnlyList<PlannedFraming> framings) => PanelPlanner.Plan(kit, OnPanel(kit), framings);

    /// <summary>The sheets that stand behind subjects.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="framings">Its framings.</param>
    /// <returns>One for each that a set-up uses.</returns>
    public static ValueList<UprightPlan> Uprights(KitSpec kit, IReadOnlyList<PlannedFraming> framings)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return UprightPlanner.Plan(kit, framings);
    }

    /// <summary>The pipe frame that carries the panel, and may hold upright sheets.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="uprights">Its upright sheets, which are cut from the same stock.</param>
    /// <param name="services">Cut planners.</param>
    /// <returns>The frame; none where no set-up stands on the panel, or none can be drawn.</returns>
    public static FramePlan? Frame(KitSpec kit, PanelPlan panel, ValueList<UprightPlan> uprights, PlanningServices services) =>
        OnPanel(kit).Count > 0 && panel.Width.Meters > 0 && panel.Depth.Meters > 0 && FramePlanner.Obstacle(kit, panel) is null
            ? FramePlanner.Plan(kit, panel, services, uprights)
            : null;

    /// <summary>What is cut and bought for upright sheets where no frame is built.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="uprights">Its upright sheets.</param>
    /// <param name="services">Cut planners.</param>
    /// <returns>The workshop; none where no sheet stands.</returns>
    public static Workshop? WorkshopWithoutFrame(KitSpec kit, PanelPlan panel, ValueList<UprightPlan> uprights, PlanningServices services) =>
        WorkshopPlanner.WithoutFrame(kit, panel, uprights, services);

    /// <summary>The studio's light: nothing is lit before somebody looks.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="frame">Its frame.</param>
    /// <param name="uprights">Its upright sheets.</param>
    public static StudioLight Light(KitSpec kit, PanelPlan panel, FramePlan? frame, ValueList<UprightPlan> uprights) => new(kit, panel, frame?.Geometry, uprights, new LightStore());

    /// <summary>Starting exposures of every set-up at every framing that it uses.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="uncertainties">What the kit writes after ±, by the path of the value.</param>
    /// <param name="framings">Its framings.</param>
    /// <param name="light">Its studio's light.</param>
    public static IReadOnlyList<ExposurePlan> Exposures(
        KitSpec kit, IReadOnlyDictionary<string, Uncertainty> uncertainties, IReadOnlyList<PlannedFraming> framings, StudioLight light)
    {
        ArgumentNullException.ThrowIfNull(kit);
        var known = new KnownInputs(kit, uncertainties);
        return [.. kit.SetUps.SelectMany(setUp => ExposurePlanner.Plan(kit, setUp, framings, light, known.Of(setUp)))];
    }

    /// <summary>What each framing sees of the lit panel at the planned powers.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="frame">Its frame.</param>
    /// <param name="light">Its studio's light.</param>
    /// <param name="framings">Its framings.</param>
    /// <param name="exposures">Its exposures.</param>
    /// <returns>A plan for each set-up that stands on the panel.</returns>
    public static IReadOnlyList<PanelLightPlan> PanelLights(
        KitSpec kit, PanelPlan panel, FramePlan? frame, StudioLight light, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        var planner = new PanelLightPlanner(kit, panel, light, frame?.Geometry);
        return [.. OnPanel(kit).Select(setUp => planner.Of(setUp, framings, [.. exposures.Where(exposure => exposure.SetUp == setUp.Name)]))];
    }

    /// <summary>What each framing sees of the lit upright sheets at the planned powers.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="light">Its studio's light.</param>
    /// <param name="framings">Its framings.</param>
    /// <param name="exposures">Its exposures.</param>
    /// <returns>A plan for each set-up that has such a sheet.</returns>
    public static ValueList<UprightLightPlan> UprightLights(KitSpec kit, StudioLight light, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return [.. kit.SetUps.Where(setUp => setUp.Upright is not null)
            .Select(setUp => UprightLightPlanner.Of(kit, setUp, light, framings, [.. exposures.Where(exposure => exposure.SetUp == setUp.Name)]))];
    }

    /// <summary>Where the lights about the subject stand, and what follows from that.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="framings">Its framings.</param>
    /// <param name="light">Its studio's light.</param>
    /// <param name="exposures">Its exposures.</param>
    /// <returns>One for each light of each exposure, but those below the panel.</returns>
    public static ValueList<LightStandPlan> LightStands(KitSpec kit, IReadOnlyList<PlannedFraming> framings, StudioLight light, IReadOnlyList<ExposurePlan> exposures)
    {
        ArgumentNullException.ThrowIfNull(kit);
        var planner = new LightStandPlanner(kit, framings, light);
        return [.. exposures.SelectMany(exposure => planner.Of(kit.SetUps.First(setUp => setUp.Name == exposure.SetUp), exposure))];
    }

    /// <summary>What is carried, in which bag, by whom.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="frame">Its frame.</param>
    /// <param name="workshop">What is built, upright sheets among it.</param>
    /// <param name="exposures">Its exposures, which say what each thing is needed for.</param>
    public static PackPlan Pack(KitSpec kit, PanelPlan panel, FramePlan? frame, Workshop? workshop, IReadOnlyList<ExposurePlan> exposures) =>
        PackPlanner.Plan(new PackInputs(kit, panel, frame, workshop, [.. exposures.Select(GearUse.Of)]), PackPlanner.Share);

    /// <summary>What other light of the place the exposures of each set-up bear.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="uncertainties">What the kit writes after ±, by the path of the value.</param>
    /// <param name="framings">Its framings.</param>
    /// <param name="light">Its studio's light.</param>
    /// <param name="exposures">Its exposures.</param>
    /// <returns>One for each set-up that a subject is photographed in.</returns>
    public static IReadOnlyList<LightBearing> Bearings(
        KitSpec kit, IReadOnlyDictionary<string, Uncertainty> uncertainties, IReadOnlyList<PlannedFraming> framings, StudioLight light, IReadOnlyList<ExposurePlan> exposures)
    {
        ArgumentNullException.ThrowIfNull(kit);
        var known = new KnownInputs(kit, uncertainties);
        return [.. kit.SetUps
            .Select(setUp => LightBearing.Of(new ExposureInputs(kit with { SetUps = [setUp] }, known.Of(setUp), framings, light), [.. exposures.Where(exposure => exposure.SetUp == setUp.Name)]))
            .OfType<LightBearing>()];
    }

    /// <summary>The order of light, subjects and set-ups in the field.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="exposures">Its exposures.</param>
    /// <param name="bearings">What light they bear.</param>
    /// <returns>The session; none where no subject can be photographed whole.</returns>
    public static SessionPlan? Session(KitSpec kit, IReadOnlyList<ExposurePlan> exposures, IReadOnlyList<LightBearing> bearings) => SessionPlanner.Plan(kit, exposures, bearings);

    /// <summary>The day at its place, hour by hour.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="session">Its session.</param>
    /// <returns>The day; none where the kit has no date or place.</returns>
    public static DayPlan? Day(KitSpec kit, SessionPlan? session)
    {
        ArgumentNullException.ThrowIfNull(kit);
        return DayPlanner.Of(kit, session);
    }

    /// <summary>Whether the features that decide what subjects are can be seen.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="framings">Its framings.</param>
    /// <param name="exposures">Its exposures.</param>
    /// <returns>One for each exposure that shows a subject with a feature whole.</returns>
    public static ValueList<FeaturePlan> Features(KitSpec kit, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures) => FeaturePlanner.Of(kit, framings, exposures);

    /// <summary>What the covers and tanks of the set-ups leave room for, show, and for how long.</summary>
    /// <param name="kit">The kit.</param>
    /// <param name="panel">Its panel.</param>
    /// <param name="framings">Its framings.</param>
    /// <param name="exposures">Its exposures.</param>
    /// <returns>One for each set-up that has a cover.</returns>
    public static ValueList<CoverPlan> Covers(KitSpec kit, PanelPlan panel, IReadOnlyList<PlannedFraming> framings, IReadOnlyList<ExposurePlan> exposures) => CoverPlanner.Of(kit, panel, framings, exposures);

    /// <summary>Everything that a plan is checked for.</summary>
    /// <param name="plan">The plan, without its checks.</param>
    public static IReadOnlyList<PlanCheck> Checks(Plan plan) => PlanChecks.Of(plan);

    /// <summary>Where somebody or something can be hurt.</summary>
    /// <param name="plan">The plan, without its cautions.</param>
    public static IReadOnlyList<PlanCaution> Cautions(Plan plan) => CautionPlanner.Of(plan);

    /// <summary>Set-ups whose flashes stand below the panel.</summary>
    internal static IReadOnlyList<SetUpSpec> OnPanel(KitSpec kit) => [.. kit.SetUps.Where(setUp => SetUpPlanners.Of(setUp).LightsPanel)];
}
