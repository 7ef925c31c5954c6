using StudioKit.Kits;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Structure;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Packing;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Advising;

/// <summary>Looks for changes that bring a kit down to its target mass and lose no framing, the least trouble first.</summary>
/// <param name="again">Plans a changed kit, without its checks.</param>
internal sealed class LighterSearch(Func<KitSpec, Plan> again)
{
    // A light solved again costs most of a plan; what holds of panel and frame mostly holds in the light.
    private const int MostTries = 2;
    private const int PanelSizes = 8;

    private static readonly PlanCheckKind[] OfTheLoad =
        [PlanCheckKind.TargetMass, PlanCheckKind.Burden, PlanCheckKind.BagMass, PlanCheckKind.BagRoom, PlanCheckKind.Places, PlanCheckKind.LongThing, PlanCheckKind.LongestPiece];

    /// <summary>The plan with what to leave at home and what to change first; as it is where nothing works that could be lost, or nothing is.</summary>
    public Plan Of(Plan plan)
    {
        if (plan.Pack.LeaveAtHome is not { Lost.Count: > 0 } home)
        {
            return plan;
        }

        var (steps, last) = Steps(plan);
        var left = last.Pack.LeaveAtHome;
        return plan with
        {
            Pack = plan.Pack with
            {
                LeaveAtHome = home with
                {
                    Lighter = steps,
                    Left = left?.Left ?? [],
                    Lost = left?.Lost ?? [],
                    Mass = left?.Mass ?? last.Pack.Total,
                    Reached = left?.Reached ?? true,
                    ProvenLeast = left?.ProvenLeast ?? true,
                },
            },
        };
    }

    private (IReadOnlyList<LighterStep> Steps, Plan Last) Steps(Plan plan)
    {
        var steps = new List<LighterStep>();
        var (last, failing) = (plan, Failing(plan));
        foreach (var candidate in new Func<Plan, IEnumerable<LighterChange>>[] { Cells, Panels, Pipes, Sheets })
        {
            if (last.Pack.LeaveAtHome is not { Lost.Count: > 0 })
            {
                break;
            }

            if (candidate(last).Take(MostTries).Select(change => Step(last, change, failing)).FirstOrDefault(found => found is not null) is var (step, after))
            {
                steps.Add(step);
                last = after;
            }
        }

        return (steps, last);
    }

    // A change counts where it saves mass, loses no framing and makes no other check fail.
    private (LighterStep Step, Plan After)? Step(Plan before, LighterChange change, HashSet<PlanCheckKind> failing)
    {
        var after = again(change.Of(before.Kit));
        var lost = Working(before).Except(Working(after), StringComparer.Ordinal).ToList();
        return after.Pack.Total < before.Pack.Total && lost.Count == 0 && Failing(after).IsSubsetOf(failing)
            ? (new LighterStep(change, before.Pack.Total - after.Pack.Total, after.Pack.Total, lost, Margin(after) - Margin(before)), after)
            : null;
    }

    private static IEnumerable<string> Working(Plan plan) => plan.Exposures.Where(exposure => exposure.IsUsable).Select(exposure => $"{exposure.SetUp}, {exposure.Framing.Name}");

    private static HashSet<PlanCheckKind> Failing(Plan plan) => [.. PlanStages.Checks(plan).Where(check => !check.Passed).Select(check => check.Kind).Except(OfTheLoad)];

    private static Stops? Margin(Plan plan)
    {
        var margins = plan.Exposures.Where(exposure => exposure.IsUsable).Select(exposure => exposure.WhiteMargin).OfType<Stops>().ToList();
        return margins.Count == 0 ? null : margins.MinBy(margin => margin.Value);
    }

    private static IEnumerable<LighterChange> Cells(Plan plan)
    {
        var spare = (plan.Session?.Flashes ?? []).Join(plan.Kit.Flashes, use => use.Flash, flash => flash.Name, (use, flash) => (flash, Needed: Math.Max(0, use.SetsNeeded - 1)))
            .Where(pair => pair.Needed < pair.flash.SpareSets).ToDictionary(pair => pair.flash.Name, pair => pair.Needed, StringComparer.Ordinal);
        return spare.Count == 0 ? [] : [new LighterChange.FewerCells(new(spare))];
    }

    // From what the framings need up to what there is, as a small frame may have no room for its fittings or for the flash.
    private static IEnumerable<LighterChange> Panels(Plan plan) => plan.Frame is null || plan.Panel.RequiredWidth <= Length.Zero
        ? []
        : Enumerable.Range(0, PanelSizes)
            .Select(i => new LighterChange.SmallerPanel(Between(plan.Panel.RequiredWidth, plan.Panel.Width, i), Between(plan.Panel.RequiredDepth, plan.Panel.Depth, i)))
            .Where(change => change.Width < plan.Panel.Width || change.Depth < plan.Panel.Depth)
            .Where(change => Bears(plan, change) && TakesFlashes(plan, change));

    private static Length Between(Length needed, Length given, int step) => needed >= given
        ? given
        : UnitMath.Min(given, WholeLengths.UpToCentimetre(needed + ((given - needed) * step / PanelSizes)));

    private static IEnumerable<LighterChange> Pipes(Plan plan) => plan.Frame is null ? [] : StockedPipe.Embedded
        .Where(stocked => PerMetre(stocked.Pipe) < PerMetre(plan.Kit.Frame.Pipe) - 1e-9)
        .OrderBy(stocked => PerMetre(stocked.Pipe))
        .Select(stocked => new LighterChange.LighterPipe(stocked))
        .Where(change => Bears(plan, change));

    private static IEnumerable<LighterChange> Sheets(Plan plan) => plan.Frame is null ? [] : SoldThickness.Over(Length.FromMillimeters(0.1))
        .Where(thickness => thickness < plan.Kit.Panel.Thickness)
        .Select(thickness => new LighterChange.ThinnerSheet(thickness))
        .Where(change => Bears(plan, change));

    private static bool TakesFlashes(Plan plan, LighterChange change)
    {
        var kit = change.Of(plan.Kit);
        var panel = PlanStages.Panel(kit, plan.PlannedFramings);
        var (design, frame) = FramePlanner.Geometry(kit, panel);
        return LowerFlashes.Placed(kit, panel, design, frame).Count(flash => flash.Fault is not null) <= plan.Frame!.LowerFlashes.Count(flash => flash.Fault is not null);
    }

    private static double PerMetre(Kits.Studio.PipeSpec pipe) => PipeMass.PerMetre(FrameDesign.PipeOf(pipe));

    // Panel and frame alone are quick to plan; light is looked at only where they hold.
    private static bool Bears(Plan plan, LighterChange change)
    {
        var failing = StructuralRetrial.Again(plan.Kit, plan.PlannedFramings) is { } before ? before.Checks.Where(check => !check.Holds).Select(check => check.Kind).ToHashSet() : [];
        return StructuralRetrial.Again(change.Of(plan.Kit), plan.PlannedFramings) is { } after
            && after.Problems <= plan.Frame!.Geometry.Problems.Count
            && after.Checks.All(check => check.Holds || failing.Contains(check.Kind));
    }
}
