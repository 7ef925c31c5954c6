using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Framing;
using StudioKit.Planning.SetUps;
using StudioKit.Planning.Studio.Lights;

namespace StudioKit.Planning.Previewing;

/// <summary>A planned studio of which something is being moved: each state of one framing, quick enough to follow a hand.</summary>
/// <remarks>
/// The exposure is solved as in a plan, from light as <see cref="LightPreview"/> has it. The frame stays as it was planned, its cradle too; a sheet whose size the kit leaves to
/// the plan keeps that size when a camera's angle is moved. What hangs on no light is left out: pack, cost, structure, session and checks. Not safe for use by several threads at once.
/// </remarks>
/// <param name="read">The kit as it was read.</param>
/// <param name="plan">Its plan.</param>
public sealed class StudioPreview(KitReadResult read, Plan plan)
{
    private readonly Dictionary<string, LightPreview?> _following = new(StringComparer.Ordinal);

    /// <summary>A framing of a set-up with something moved.</summary>
    /// <param name="setUp">Name of a set-up that lights the panel.</param>
    /// <param name="framing">Name of the framing.</param>
    /// <param name="changes">What is moved.</param>
    /// <param name="power">Power that the flashes below are turned to; none for the one that the exposure asks for.</param>
    /// <returns>The framing; without light on the panel where a flash would stand where it cannot. None where nothing can be followed: the plan has no light there, or no such framing.</returns>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public FramingPreview? Of(string setUp, string framing, ValueList<KitChange> changes, FlashPower? power = null)
    {
        ArgumentNullException.ThrowIfNull(changes);
        var (kit, planned) = (changes.Aggregate(read.Kit!, (changed, change) => change.Apply(changed)), plan.PlannedFramings.FirstOrDefault(other => other.Plan.Name == framing));
        return planned is null || plan.Light is not { } light || kit.SetUps.FirstOrDefault(other => other.Name == setUp) is not { } moved || Following(setUp) is not { } following
            ? null
            : Of(new Moved(kit, moved, planned, following, power), light, changes.Any(change => change is KitChange.Sheet) ? Resized(kit) : plan.Panel);
    }

    private FramingPreview Of(Moved what, StudioLight light, PanelPlan panel)
    {
        var moving = light.Moving(KitSlice.ForLight(what.Kit), panel, what.Following);
        var exposure = ExposurePlanner.Plan(new SetUpAtFraming(
            KitSlice.ForExposures(what.Kit, what.SetUp), what.SetUp, what.Framing, new KnownInputs(what.Kit, read.Uncertainties).Of(what.SetUp), moving));
        var panelLight = new PanelLightPlanner(what.Kit, panel, moving, plan.Frame?.Geometry).Of(what.SetUp, [what.Framing], [Turned(exposure, what.Power)]);
        return new FramingPreview(what.Kit, exposure, panelLight);
    }

    // Glare and light thrown up go with the power that the exposure asks for, so they are not told of another.
    private static ExposurePlan Turned(ExposurePlan exposure, FlashPower? power) => power is not { } turned ? exposure : exposure with
    {
        Lights = [.. exposure.Lights.Select(light => light.Role == LightRole.Below ? light with { Power = turned } : light)],
        Veil = null,
        Uplight = null,
    };

    private PanelPlan Resized(KitSpec kit) => PlanStages.Panel(kit, plan.PlannedFramings);

    private LightPreview? Following(string setUp)
    {
        if (!_following.TryGetValue(setUp, out var following))
        {
            following = read.Kit!.SetUps.FirstOrDefault(other => other.Name == setUp) is { } still && SetUpPlanners.Of(still).LightsPanel ? plan.Light!.Follow(still) : null;
            _following.Add(setUp, following);
        }

        return following;
    }

    private sealed record Moved(KitSpec Kit, SetUpSpec SetUp, PlannedFraming Framing, LightPreview Following, FlashPower? Power);
}
