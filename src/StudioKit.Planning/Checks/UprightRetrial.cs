using StudioKit.Kits;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Studio.Frames;
using StudioKit.Planning.Studio.Uprights;

namespace StudioKit.Planning.Checks;

/// <summary>Plans what holds an upright sheet of a changed kit again, to see whether a check of it then passes.</summary>
internal static class UprightRetrial
{
    /// <summary>Changes that make a check pass and no other of the sheet fail, the least trouble first.</summary>
    public static IEnumerable<KitChange> Passing(PlanCheckKind kind, string name, Plan plan)
    {
        if (plan.Kit.Uprights.FirstOrDefault(one => one.Name == name) is not { } upright || plan.Uprights.FirstOrDefault(one => one.Name == name) is not { } sheet)
        {
            return [];
        }

        var failing = Failing(plan.Workshop?.Uprights.FirstOrDefault(stand => stand.Name == name));
        return UprightTrials.For(kind, upright, sheet, plan.Kit)
            .Where(change => Again(change.Apply(plan.Kit), name, plan) is { } after && Failing(after) is var left && !left.Contains(kind) && left.IsSubsetOf(failing));
    }

    private static UprightStandPlan? Again(KitSpec kit, string name, Plan plan)
    {
        var uprights = PlanStages.Uprights(kit, plan.PlannedFramings);
        var frame = plan.Frame is null ? null : FramePlanner.Obstacle(kit, plan.Panel) is null ? FramePlanner.Geometry(kit, plan.Panel).Frame : plan.Frame.Geometry;
        return UprightStandPlanner.Of(kit, uprights, frame).FirstOrDefault(stand => stand.Name == name);
    }

    private static HashSet<PlanCheckKind> Failing(UprightStandPlan? stand) => [.. (stand?.Checks ?? []).Where(check => !check.Holds).Select(check => StructureChecks.KindOf(check.Kind))];
}
