using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Standing;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Framing;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.Standing;
using StudioKit.Planning.Studio.Frames;
using StudioKit.Planning.Studio.Lights;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>Plans one exposure of a changed kit, by the same stages as a whole plan; what the changes do not touch is kept.</summary>
internal sealed class Replanner
{
    // Nobody builds a frame of so many pieces, and laying one out anew for every place of a flash takes minutes: it gets no advice on moving that flash.
    private const int MostMembers = 200;

    private readonly IReadOnlyDictionary<string, Uncertainty> _written;
    private readonly IReadOnlyList<PlannedFraming> _framings;
    private readonly PanelPlan _panel;
    private readonly FrameResult? _frame;
    private readonly int _refused;
    private readonly StudioLight _light;
    private readonly Kept<(KitSpec Kit, PanelPlan Panel), FrameResult?> _frames = new(32);
    private readonly Kept<KitSpec, PanelPlan> _panels = new(32);
    private readonly Kept<KitSpec, ValueList<UprightPlan>> _uprights = new(32);

    /// <param name="read">The kit as it was read.</param>
    /// <param name="framings">Its framings, which no advice changes.</param>
    /// <param name="panel">Its panel, which no advice changes but what moves a sheet that stands on it.</param>
    /// <param name="frame">Its frame.</param>
    /// <param name="light">Its studio's light.</param>
    public Replanner(KitReadResult read, IReadOnlyList<PlannedFraming> framings, PanelPlan panel, FramePlan? frame, StudioLight light)
    {
        (Kit, _written, _framings, _panel, _frame, _light) = (read.Kit!, read.Uncertainties, framings, panel, frame?.Geometry, light);
        _refused = frame?.Geometry.Refused ?? 0;
    }

    private Replanner(Replanner other, KitSpec kit)
    {
        (Kit, _written, _framings, _panel, _frame, _light) = (kit, other._written, other._framings, other._panel, other._frame, other._light);
        _refused = other._refused;
    }

    /// <summary>The kit as it is.</summary>
    public KitSpec Kit { get; }

    /// <summary>Looks for where the lights of its exposures would stand clear.</summary>
    public StandSearch Stands(IReadOnlyList<ExposurePlan> exposures) => new(Kit, exposures, _framings, _light);

    /// <summary>What the lens would hide of a light of an exposure that came from another direction.</summary>
    public Stops HiddenFrom(ExposurePlan now, int place, LightDirection from)
    {
        var setUp = SetUpOf(now);
        var turned = setUp.Lights[place] with { Azimuth = from.Azimuth, Elevation = from.Elevation };
        return LensShade.Loss(Kit, setUp, _framings.First(framing => framing.Plan.Name == now.Framing.Name), turned);
    }

    /// <summary>A kit that differs in what neither panel nor frame is made by, as in the light of a flash.</summary>
    public Replanner With(ValueList<KitChange> changes) => new(this, changes.Aggregate(Kit, (changed, change) => change.Apply(changed)));

    /// <summary>The exposure of a set-up at a framing when the kit is changed; none where a flash would stand where neither frame nor ground carries it.</summary>
    public ExposurePlan? Plan(ExposurePlan now, ValueList<KitChange> changes)
    {
        var kit = changes.Aggregate(Kit, (changed, change) => change.Apply(changed));
        var setUp = kit.SetUps.First(candidate => candidate.Name == now.SetUp);
        var framing = _framings.First(candidate => candidate.Plan.Name == now.Framing.Name);
        var isLit = SetUpPlanners.Of(setUp).LightsSheet;
        var light = isLit ? LightOf(kit, now.OnPanel && ChangesBelow(setUp, changes)) : null;
        return isLit && light is null
            ? null
            : ExposurePlanner.Plan(new SetUpAtFraming(KitSlice.ForExposures(kit, setUp), setUp, framing, new KnownInputs(kit, _written).Of(setUp), light));
    }

    /// <summary>Ground to the panel.</summary>
    public Length PanelHeight => _frame?.PanelHeight ?? Kit.Frame.Height;

    /// <summary>The set-up of an exposure.</summary>
    public SetUpSpec SetUpOf(ExposurePlan exposure) => Kit.SetUps.First(setUp => setUp.Name == exposure.SetUp);

    /// <summary>The upright sheet of a set-up as large as a changed kit needs it, whatever size it is given; none where the set-up has none.</summary>
    public UprightPlan? UprightNeeded(SetUpSpec setUp, ValueList<KitChange> changes)
    {
        var kit = changes.Aggregate(Kit, (changed, change) => change.Apply(changed));
        return UprightsOf(kit with { Uprights = [.. kit.Uprights.Select(upright => upright with { Width = null, Height = null })] }).FirstOrDefault(upright => upright.Name == setUp.Upright);
    }

    private static bool ChangesBelow(SetUpSpec setUp, ValueList<KitChange> changes) => changes.Any(change => change switch
    {
        KitChange.Move move => setUp.Lights[move.Light].Role == LightRole.Below,
        KitChange.Modify modify => setUp.Lights[modify.Light].Role == LightRole.Below,
        KitChange.Add add => add.Light.Role == LightRole.Below,
        KitChange.Background or KitChange.RecutUpright => setUp.Upright is not null,
        _ => false,
    });

    private StudioLight? LightOf(KitSpec kit, bool moved)
    {
        if (!moved)
        {
            return _light.With(KitSlice.ForLight(kit), _panel, _frame, UprightsOf(kit));
        }

        var panel = PanelOf(kit);
        return _frame is not { Members.Count: > MostMembers } && _frames.Get((KitSlice.ForFrame(kit), panel), of => FrameOf(of.Kit, of.Panel)) is { } frame
            ? _light.With(KitSlice.ForLight(kit), panel, frame, UprightsOf(kit))
            : null;
    }

    // Beyond a sheet that stands on it nothing of the panel is seen: moved, that sheet makes the panel longer or shorter.
    private PanelPlan PanelOf(KitSpec kit) => KitSlice.ForPanel(kit) is var seen && seen == KitSlice.ForPanel(Kit) ? _panel : _panels.Get(seen, changed => PlanStages.Panel(changed, _framings));

    private ValueList<UprightPlan> UprightsOf(KitSpec kit) => _uprights.Get(KitSlice.ForUprights(kit), changed => PlanStages.Uprights(changed, _framings));

    // A flash below that the frame has no cradle for, nor the ground a place, cannot be moved there in the field.
    private FrameResult? FrameOf(KitSpec kit, PanelPlan panel)
    {
        if (FramePlanner.Obstacle(kit, panel) is not null)
        {
            return null;
        }

        var frame = FramePlanner.Geometry(kit, panel).Frame;
        return frame.Refused <= _refused ? frame : null;
    }
}
