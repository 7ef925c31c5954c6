using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Kits.Studio;
using StudioKit.Kits.Triggers;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using UnitsNet;

namespace StudioKit.Planning.Mending;

/// <summary>Upright sheets: where a flat one ends, and where one that stands does not do.</summary>
internal static class UprightMends
{
    private const double AngleStep = 5;
    private const string UsualName = "upright sheet";

    // Flat behind the subject before the sheet that stands there (common practice, no source).
    private static readonly Length BehindOnPanel = Length.FromMillimeters(150);
    private static readonly Length FlashBehind = Length.FromMillimeters(300);
    private static readonly Length Nearest = Length.FromMillimeters(50);
    private static readonly Length NearerStep = Length.FromMillimeters(50);

    /// <summary>A sheet that stands at the panel's back, held by a table's rail, with a flash of its own that the set-ups leave in the bag.</summary>
    public static IEnumerable<ValueList<KitChange>> Behind(Plan plan)
    {
        var low = PlanStages.OnPanel(plan.Kit).Where(setUp => setUp.Upright is null && setUp.Cover is null && IsLow(plan, setUp)).ToList();
        var spares = plan.Kit.Flashes.Select(flash => flash.Name).Where(flash => low.TrueForAll(setUp => setUp.Lights.All(light => light.Flash != flash)));
        var name = plan.Kit.Uprights.FirstOrDefault(upright => upright.Carrier == UprightCarrier.Frame)?.Name ?? Unused(plan.Kit);
        foreach (var flash in low.Count == 0 || plan.Kit.Frame.Kind != FrameKind.Table ? [] : spares.Take(1))
        {
            ValueList<KitChange> changes = [.. low.Select(setUp => new KitChange.BeforeSheet(setUp.Name, name, Fired(setUp, flash), BehindOnPanel))];
            var kit = changes.Aggregate(plan.Kit, (changed, change) => change.Apply(changed));
            var panel = PlanStages.Panel(kit, plan.PlannedFramings);
            yield return panel.SizeGiven && (panel.RequiredWidth > panel.Width || panel.RequiredDepth > panel.Depth)
                ? [.. changes, new KitChange.Recut(UnitMath.Max(panel.Width, WholeLengths.UpToCentimetre(panel.RequiredWidth)), UnitMath.Max(panel.Depth, WholeLengths.UpToCentimetre(panel.RequiredDepth)))]
                : changes;
        }
    }

    /// <summary>The sheet that the framings need, in whole centimetres.</summary>
    public static IEnumerable<ValueList<KitChange>> Larger(PlanCheck check, Plan plan)
    {
        var upright = plan.Uprights.First(one => one.Name == check.Parts[0]);
        yield return [new KitChange.RecutUpright(upright.Name, UnitMath.Max(upright.Width, WholeLengths.UpToCentimetre(upright.RequiredWidth)), UnitMath.Max(upright.Height, WholeLengths.UpToCentimetre(upright.RequiredHeight)))];
    }

    /// <summary>A sheet nearer the subject, one down to the ground, or a camera that looks more level.</summary>
    public static IEnumerable<ValueList<KitChange>> NothingUnder(PlanCheck check, Plan plan)
    {
        var upright = plan.Uprights.First(one => one.Name == check.Parts[0]);
        var seen = upright.SeenUnder.Select(gap => gap.SetUp).Distinct(StringComparer.Ordinal).ToList();
        return new[] { Lowered(upright), Nearer(plan, upright, seen), Level(plan, upright, seen) }.OfType<IReadOnlyList<KitChange>>().Select(changes => (ValueList<KitChange>)[.. changes]);
    }

    /// <summary>A flash raised out of the ground.</summary>
    public static IEnumerable<ValueList<KitChange>> Raised(PlanCheck check, Plan plan) => check.Remedy is not { Amount: CheckAmount.Measure { Value: Length up }, Parts: [var flash, var name] }
        ? []
        : from light in plan.Kit.SetUps.First(setUp => setUp.Name == name).Lights.Select((light, place) => (light, place))
          where light.light.Role == LightRole.Behind && light.light.Flash == flash
          select (ValueList<KitChange>)[new KitChange.LiftFlash(name, light.place, light.light.OffsetUp + up)];

    // The first that leaves nothing to be seen under the sheet; a smaller one may then do, and a larger one be needed, which the plan says.
    private static List<KitChange>? Nearer(Plan plan, UprightPlan upright, List<string> setUps)
    {
        var from = setUps.Select(name => plan.Kit.SetUps.First(setUp => setUp.Name == name).BackgroundDistance).Max();
        for (var distance = from - NearerStep; distance >= Nearest; distance -= NearerStep)
        {
            List<KitChange> changes = [.. setUps.Select(name => new KitChange.Background(name, distance))];
            if (SeesNothing(plan, upright, changes))
            {
                return changes;
            }
        }

        return null;
    }

    private static List<KitChange>? Level(Plan plan, UprightPlan upright, List<string> setUps)
    {
        var angles = setUps.SelectMany(name => plan.Kit.SetUps.First(setUp => setUp.Name == name).CameraPitches).Select(pitch => pitch.Degrees);
        for (var angle = (Math.Ceiling(angles.Max() / AngleStep) - 1) * AngleStep; angle >= 0; angle -= AngleStep)
        {
            List<KitChange> changes = [.. from name in setUps
                                          from pitch in plan.Kit.SetUps.First(setUp => setUp.Name == name).CameraPitches.Select((pitch, place) => (pitch, place))
                                          where pitch.pitch.Degrees > angle
                                          select new KitChange.Pitch(name, pitch.place, Angle.FromDegrees(angle))];
            if (SeesNothing(plan, upright, changes))
            {
                return changes;
            }
        }

        return null;
    }

    private static List<KitChange>? Lowered(UprightPlan upright) => upright.LowerEdge > UprightSpec.LowestOver(upright.Carrier) ? [new KitChange.LowerUpright(upright.Name)] : null;

    private static bool SeesNothing(Plan plan, UprightPlan upright, List<KitChange> changes) =>
        PlanStages.Uprights(changes.Aggregate(plan.Kit, (kit, change) => change.Apply(kit)), plan.PlannedFramings).First(one => one.Name == upright.Name).SeenUnder.Count == 0;

    // Fired as the others of the set-up are, in a group that none of them has.
    private static LightSpec Fired(SetUpSpec setUp, string flash)
    {
        var behind = new LightSpec { Flash = flash, Role = LightRole.Behind, Distance = FlashBehind, Trigger = setUp.Lights.Select(light => light.Trigger).FirstOrDefault(trigger => trigger is not null) };
        return behind.Trigger is null
            ? behind
            : behind with { Group = Enumerable.Range(0, TriggerGroup.Most).Select(TriggerGroup.Letter).FirstOrDefault(letter => setUp.Lights.All(light => light.Group != letter)) ?? TriggerGroup.First };
    }

    private static bool IsLow(Plan plan, SetUpSpec setUp)
    {
        var panel = PlanStages.Panel(plan.Kit with { SetUps = [setUp] }, plan.PlannedFramings);
        return panel.FlatFrom is not null || panel.Unfilled.Count > 0;
    }

    private static string Unused(KitSpec kit) =>
        Enumerable.Range(1, kit.Uprights.Count + 1).Select(number => number == 1 ? UsualName : FormattableString.Invariant($"{UsualName} {number}")).First(name => kit.Uprights.All(upright => upright.Name != name));
}
