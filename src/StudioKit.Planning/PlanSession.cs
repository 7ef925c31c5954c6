using StudioKit.Kits;
using StudioKit.Physics;
using StudioKit.Physics.Packing;
using StudioKit.Planning.Advising;
using StudioKit.Planning.Covers;
using StudioKit.Planning.Cutting;
using StudioKit.Planning.Features;
using StudioKit.Planning.Framing;
using StudioKit.Planning.Handling;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Session;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning;

/// <summary>Makes plans of a kit that changes: every stage's result is kept by the value of what went in, so that a changed value costs what depends on it.</summary>
/// <remarks>
/// A plan is the same whatever was planned before it. Not safe for use by several threads at once; an explorer of designs gives each its own.
/// </remarks>
public sealed class PlanSession
{
    private readonly PlanningServices _services;
    private readonly LightStore _lit = new();
    private readonly Kept<KitSpec, IReadOnlyList<PlannedFraming>> _framings = new();
    private readonly Kept<(KitSpec Kit, IReadOnlyList<PlannedFraming> Framings), PanelPlan> _panels = new();
    private readonly Kept<(KitSpec Kit, PanelPlan Panel, ValueList<UprightPlan> Uprights), FramePlan?> _frames = new();
    private readonly Kept<(KitSpec Kit, PanelPlan Panel, ValueList<UprightPlan> Uprights), Workshop?> _workshops = new();
    private readonly Kept<(KitSpec Kit, IReadOnlyList<PlannedFraming> Framings), ValueList<UprightPlan>> _uprights = new();
    private readonly Kept<(KitSpec Kit, PanelPlan Panel, FramePlan? Frame, ValueList<UprightPlan> Uprights), StudioLight> _lights = new();
    private readonly Kept<ExposureInputs, IReadOnlyList<ExposurePlan>> _exposures = new(64);
    private readonly Kept<PanelLightInputs, PanelLightPlan> _panelLights = new();
    private readonly Kept<PanelLightInputs, UprightLightPlan> _uprightLights = new();
    private readonly Kept<PackInputs, PackPlan> _packs = new();
    private readonly Kept<SharedOut, BagAssignmentResult?> _shares = new();
    private readonly Kept<(ExposureInputs Inputs, ValueList<ExposurePlan> Exposures), LightBearing?> _bearings = new(64);
    private readonly Kept<(KitSpec Kit, ValueList<ExposurePlan> Exposures, ValueList<LightBearing> Bearings), SessionPlan?> _sessions = new();
    private readonly Kept<(KitSpec Kit, SessionPlan? Session), DayPlan?> _days = new();
    private readonly Kept<(KitSpec Kit, IReadOnlyList<PlannedFraming> Framings, ValueList<ExposurePlan> Exposures), ValueList<FeaturePlan>> _features = new();
    private readonly Kept<(KitSpec Kit, IReadOnlyList<PlannedFraming> Framings, StudioLight Light, ValueList<ExposurePlan> Exposures), ValueList<LightStandPlan>> _stands = new();

    private readonly Kept<(KitSpec Kit, PanelPlan Panel, IReadOnlyList<PlannedFraming> Framings, ValueList<ExposurePlan> Exposures), ValueList<CoverPlan>> _covers = new();

    /// <summary>Starts a session.</summary>
    /// <param name="services">Cut planners; the plain ones where none are given.</param>
    public PlanSession(PlanningServices? services = null)
    {
        var given = services ?? new PlanningServices();
        _services = new PlanningServices { Bars = new KeptBarCuts(given.Bars), Sheets = new KeptSheetCuts(given.Sheets) };
    }

    /// <summary>Works out everything: framings, panel, frame, light, exposures, pack, session and checks.</summary>
    /// <param name="read">A kit as it was read, without errors.</param>
    /// <param name="progress">Told each stage as it begins; none where nobody watches.</param>
    /// <param name="cancellation">Stops between two stages or two set-ups; what was worked out until then is kept.</param>
    /// <exception cref="ArgumentException">The reading holds no kit.</exception>
    /// <exception cref="OperationCanceledException">The plan was stopped.</exception>
    public Plan Plan(KitReadResult read, IProgress<PlanStage>? progress = null, CancellationToken cancellation = default) => Plan(read, progress, isWithoutRemedies: false, cancellation);

    /// <summary>The same plan, but that failing checks do not say what would mend them.</summary>
    internal Plan PlanWithoutRemedies(KitReadResult read, CancellationToken cancellation) => Plan(read, null, isWithoutRemedies: true, cancellation);

    private Plan Plan(KitReadResult read, IProgress<PlanStage>? progress, bool isWithoutRemedies, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(read);
        if (read.Kit is null)
        {
            throw new ArgumentException("The kit could not be read; see its diagnostics.", nameof(read));
        }

        var draft = Draft(read, progress, cancellation);
        cancellation.ThrowIfCancellationRequested();
        progress?.Report(PlanStage.Checks);
        var lighter = new LighterSearch(changed => Draft(read with { Kit = changed }, null, cancellation)).Of(draft) with { IsWithoutRemedies = isWithoutRemedies };
        return lighter with { Checks = PlanStages.Checks(lighter), Cautions = PlanStages.Cautions(lighter) };
    }

    private Plan Draft(KitReadResult read, IProgress<PlanStage>? progress, CancellationToken cancellation)
    {
        var kit = read.Kit!;
        Begin(PlanStage.Framings);
        var framings = _framings.Get(KitSlice.ForFramings(kit), PlanStages.Framings);
        Begin(PlanStage.Panel);
        var panel = _panels.Get((KitSlice.ForPanel(kit), framings), static of => PlanStages.Panel(of.Kit, of.Framings));
        var uprights = _uprights.Get((KitSlice.ForUprights(kit), framings), static of => PlanStages.Uprights(of.Kit, of.Framings));
        Begin(PlanStage.Frame);
        var frame = _frames.Get((KitSlice.ForFrame(kit), panel, uprights), of => PlanStages.Frame(of.Kit, of.Panel, of.Uprights, _services));
        var alone = frame is null ? _workshops.Get((KitSlice.ForFrame(kit), panel, uprights), of => PlanStages.WorkshopWithoutFrame(of.Kit, of.Panel, of.Uprights, _services)) : null;
        Begin(PlanStage.Light);
        var light = _lights.Get((KitSlice.ForLight(kit), panel, frame, uprights), of => new StudioLight(of.Kit, of.Panel, of.Frame?.Geometry, of.Uprights, _lit));
        Begin(PlanStage.Exposures);
        var exposures = Exposures(read, framings, light, cancellation);
        var panelLights = PanelLights(new PanelLightInputs(kit, panel, frame, light, framings, []), exposures, cancellation);
        var uprightLights = UprightLights(new PanelLightInputs(kit, panel, frame, light, framings, []), exposures, cancellation);
        Begin(PlanStage.Pack);
        var pack = _packs.Get(new PackInputs(KitSlice.ForPack(kit), panel, frame, frame?.Workshop ?? alone, [.. exposures.Select(GearUse.Of)]), of => PackPlanner.Plan(of, what => _shares.Get(what, PackPlanner.Share)));
        Begin(PlanStage.Session);
        var bearings = Bearings(read, framings, light, exposures);
        var session = _sessions.Get((KitSlice.ForSession(kit), [.. exposures], bearings), static of => PlanStages.Session(of.Kit, of.Exposures, of.Bearings));
        return new Plan
        {
            Kit = kit,
            ContentHash = read.ContentHash,
            Corrections = read.Corrections,
            Framings = [.. framings.Select(framing => framing.Plan)],
            PlannedFramings = framings,
            Panel = panel,
            Uprights = uprights,
            UprightLights = uprightLights,
            Light = light,
            PanelLights = panelLights,
            Exposures = exposures,
            LightStands = _stands.Get((KitSlice.ForLightStands(kit), framings, light, [.. exposures]), static of => PlanStages.LightStands(of.Kit, of.Framings, of.Light, of.Exposures)),
            Advice = new AdviceBook(new Replanner(read, framings, panel, frame, light), exposures),
            Features = _features.Get((KitSlice.ForFeatures(kit), framings, [.. exposures]), static of => PlanStages.Features(of.Kit, of.Framings, of.Exposures)),
            Covers = _covers.Get((KitSlice.ForCovers(kit), panel, framings, [.. exposures]), static of => PlanStages.Covers(of.Kit, of.Panel, of.Framings, of.Exposures)),
            AnimalLadder = AnimalLadder.Of(exposures),
            DepthCurves = DepthCurves.Of(kit, exposures),
            Frame = frame,
            WorkshopWithoutFrame = alone,
            Pack = pack,
            Handling = HandlingPlanner.Of(kit),
            Session = session,
            Day = _days.Get((KitSlice.ForDay(kit), session), static of => PlanStages.Day(of.Kit, of.Session)),
            Checks = [],
            Written = read.Written,
            Defaults = [.. read.Defaults.Select(entry => new PlanDefault(entry.Path, entry.Value))],
        };


        void Begin(PlanStage stage)
        {
            cancellation.ThrowIfCancellationRequested();
            progress?.Report(stage);
        }
    }

    private IReadOnlyList<ExposurePlan> Exposures(
        KitReadResult read, IReadOnlyList<PlannedFraming> framings, StudioLight light, CancellationToken cancellation)
    {
        return [.. InputsOf(read, framings, light).SelectMany(inputs =>
        {
            cancellation.ThrowIfCancellationRequested();
            return _exposures.Get(inputs, ExposureInputs.Solve);
        })];
    }

    private ValueList<LightBearing> Bearings(KitReadResult read, IReadOnlyList<PlannedFraming> framings, StudioLight light, IReadOnlyList<ExposurePlan> exposures) =>
        [.. InputsOf(read, framings, light)
            .Select(inputs => _bearings.Get((inputs, [.. exposures.Where(exposure => exposure.SetUp == inputs.Kit.SetUps[0].Name)]), static of => LightBearing.Of(of.Inputs, of.Exposures)))
            .OfType<LightBearing>()];

    private static IEnumerable<ExposureInputs> InputsOf(KitReadResult read, IReadOnlyList<PlannedFraming> framings, StudioLight light)
    {
        var known = new KnownInputs(read.Kit!, read.Uncertainties);
        return read.Kit!.SetUps.Select(setUp =>
            new ExposureInputs(KitSlice.ForExposures(read.Kit, setUp), known.Of(setUp), framings, SetUpPlanners.Of(setUp).LightsSheet ? light : null));
    }

    private ValueList<UprightLightPlan> UprightLights(PanelLightInputs studio, IReadOnlyList<ExposurePlan> exposures, CancellationToken cancellation) =>
        [.. studio.Kit.SetUps.Where(setUp => setUp.Upright is not null).Select(setUp =>
        {
            cancellation.ThrowIfCancellationRequested();
            return _uprightLights.Get(
                studio with { Kit = KitSlice.ForExposures(studio.Kit, setUp), Panel = PanelPlan.None, Frame = null, Exposures = [.. exposures.Where(exposure => exposure.SetUp == setUp.Name)] },
                PanelLightInputs.PlanUpright);
        })];

    private IReadOnlyList<PanelLightPlan> PanelLights(PanelLightInputs studio, IReadOnlyList<ExposurePlan> exposures, CancellationToken cancellation) =>
        [.. PlanStages.OnPanel(studio.Kit).Select(setUp =>
        {
            cancellation.ThrowIfCancellationRequested();
            return _panelLights.Get(
                studio with { Kit = KitSlice.ForPanelLights(studio.Kit, setUp), Exposures = [.. exposures.Where(exposure => exposure.SetUp == setUp.Name)] },
                PanelLightInputs.Plan);
        })];
}
