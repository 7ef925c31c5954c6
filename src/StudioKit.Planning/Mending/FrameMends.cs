using StudioKit.Kits;
using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Structure.Frames;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Studio.Frames;
using UnitsNet;

namespace StudioKit.Planning.Mending;

/// <summary>Frames that can be drawn, go together, go into the pack and bear what is asked of them.</summary>
internal static class FrameMends
{
    private const int MostScreened = 24;
    private const int PanelSizes = 6;

    // The lowest that somebody still kneels before: half as high as a usual table (common practice, no source).
    private static readonly Length Lowest = Length.FromCentimeters(25);

    /// <summary>A frame that can be drawn.</summary>
    public static IEnumerable<ValueList<KitChange>> Drawn(PlanCheck check, Plan plan)
    {
        var obstacle = check.Findings.OfType<CheckFinding.OfNoFrame>().First().Obstacle;
        return obstacle.Kind switch
        {
            FrameObstacleKind.NarrowPanel => [[Over(plan, obstacle.Size)]],
            FrameObstacleKind.FittingsUnderGround => [[Raised(plan, obstacle.Size)]],
            _ => Screened(plan, Nudged(plan), (kit, panel) => FramePlanner.Obstacle(kit, panel) is null),
        };
    }

    /// <summary>A frame whose pipes fill their sockets and go into the pack.</summary>
    public static IEnumerable<ValueList<KitChange>> Fitting(PlanCheck check, Plan plan)
    {
        var problem = check.Findings.OfType<CheckFinding.OfFrame>().First().Problem;
        return problem.Kind switch
        {
            FrameProblemKind.NoRoomForLegs => [[Raised(plan, problem.Limit - problem.Size)]],
            FrameProblemKind.PieceTooLong when check.Remedy?.Amount is CheckAmount.Measure { Value: Length length } => [[new KitChange.PieceLength(length)]],
            _ => Screened(plan, OtherSizes(plan), (kit, panel) => FramePlanner.Obstacle(kit, panel) is null && FramePlanner.Geometry(kit, panel).Frame.GoesTogether),
        };
    }

    /// <summary>Pieces that are split where the bag ends, or a panel no larger than it has to be.</summary>
    public static IEnumerable<ValueList<KitChange>> Shorter(PlanCheck check, Plan plan)
    {
        var longest = check.Capacity switch
        {
            CheckAmount.LongRoom room => room.Longest,
            CheckAmount.Measure { Value: Length length } => length,
            _ => FrameDesign.LongestPiece(plan.Kit),
        };
        if (check.Kind == PlanCheckKind.LongThing && longest < FrameDesign.LongestPiece(plan.Kit) + Length.FromMillimeters(1))
        {
            yield return [new KitChange.PieceLength(Length.FromMillimeters(Math.Floor(longest.Millimeters)))];
        }

        foreach (var shrunk in Screened(plan, Shrunk(plan), (kit, panel) => TakesFlashes(plan, kit, panel)))
        {
            yield return shrunk;
        }
    }

    /// <summary>What the check was planned with already; where nothing did alone, a smaller panel or a lower frame.</summary>
    public static IEnumerable<ValueList<KitChange>> Strong(PlanCheck check, Plan plan) => check.Remedy?.Change is { } change
        ? [[new KitChange.Strengthen(change)]]
        : Screened(plan, Smaller(plan), (kit, _) => StructuralRetrial.Again(kit, plan.PlannedFramings) is { } after && after.Checks.All(found => found.Holds || StructureChecks.KindOf(found.Kind) != check.Kind));

    // Panel and frame alone are quick to lay out: only what does there is planned as a whole.
    private static IEnumerable<ValueList<KitChange>> Screened(Plan plan, IEnumerable<ValueList<KitChange>> candidates, Func<KitSpec, PanelPlan, bool> stands) => candidates.Take(MostScreened).Where(changes =>
    {
        var kit = changes.Aggregate(plan.Kit, (changed, change) => change.Apply(changed));
        return stands(kit, PlanStages.Panel(kit, plan.PlannedFramings));
    });

    private static IEnumerable<ValueList<KitChange>> OtherSizes(Plan plan) =>
        from step in (int[])[1, 2, 3, 5, 8]
        from change in (KitChange[])[
            new KitChange.FrameHeight(plan.Kit.Frame.Height + Length.FromCentimeters(step)),
            new KitChange.Recut(plan.Panel.Width + Length.FromCentimeters(step), null),
            new KitChange.Recut(null, plan.Panel.Depth + Length.FromCentimeters(step))]
        select (ValueList<KitChange>)[change];

    private static IEnumerable<ValueList<KitChange>> Nudged(Plan plan) =>
        from step in (int[])[1, -1, 2, -2, 4, -4]
        from isAcross in (bool[])[true, false]
        select (ValueList<KitChange>)[.. from setUp in PlanStages.OnPanel(plan.Kit)
                                         from light in setUp.Lights.Select((light, place) => (light, place))
                                         where light.light.Role == LightRole.Below
                                         select isAcross
                                             ? new KitChange.Shift(setUp.Name, light.place, light.light.OffsetRight + Length.FromCentimeters(step), null)
                                             : new KitChange.Shift(setUp.Name, light.place, null, light.light.OffsetBack + Length.FromCentimeters(step))];

    // The panel first, then the frame lower by what it takes, then both.
    private static IEnumerable<ValueList<KitChange>> Smaller(Plan plan)
    {
        var shrunk = Shrunk(plan).ToList();
        foreach (var changes in shrunk)
        {
            yield return changes;
        }

        for (var down = Length.FromCentimeters(5); plan.Kit.Frame.Height - down >= Lowest; down += Length.FromCentimeters(5))
        {
            yield return [.. Lowered(plan, down)];
            yield return [.. shrunk.Count > 0 ? shrunk[^1] : [], .. Lowered(plan, down)];
        }
    }

    // A flash below that would come to stand in the ground comes nearer to the panel by as much.
    private static IEnumerable<KitChange> Lowered(Plan plan, Length down) =>
        (from setUp in PlanStages.OnPanel(plan.Kit)
         from light in setUp.Lights.Select((light, place) => (light, place))
         where light.light.Role == LightRole.Below && light.light.Distance > down
         select (KitChange)new KitChange.Move(setUp.Name, light.place, light.light.Distance - down)).Prepend(new KitChange.FrameHeight(plan.Kit.Frame.Height - down));

    // From what there is down to what the framings need, in whole centimetres.
    private static IEnumerable<ValueList<KitChange>> Shrunk(Plan plan) => plan.Panel.RequiredWidth <= Length.Zero ? [] : Enumerable.Range(1, PanelSizes)
        .Select(step => (Width: Between(plan.Panel.RequiredWidth, plan.Panel.Width, step), Depth: Between(plan.Panel.RequiredDepth, plan.Panel.Depth, step)))
        .Where(size => size.Width is not null || size.Depth is not null)
        .Distinct()
        .Select(size => (ValueList<KitChange>)[new KitChange.Recut(size.Width, size.Depth)]);

    private static Length? Between(Length needed, Length given, int step)
    {
        var size = WholeLengths.UpToCentimetre(given - ((given - needed) * step / PanelSizes));
        return needed < given && size < given ? size : null;
    }

    private static bool TakesFlashes(Plan plan, KitSpec kit, PanelPlan panel)
    {
        if (FramePlanner.Obstacle(kit, panel) is not null)
        {
            return false;
        }

        var (design, frame) = FramePlanner.Geometry(kit, panel);
        return LowerFlashes.Placed(kit, panel, design, frame).Count(flash => flash.Fault is not null) <= (plan.Frame?.LowerFlashes.Count(flash => flash.Fault is not null) ?? 0);
    }

    private static KitChange.Recut Over(Plan plan, Length size)
    {
        var least = Length.FromCentimeters(Math.Floor(size.Centimeters + 1e-6) + 1);
        return new KitChange.Recut(plan.Panel.Width < least ? least : null, plan.Panel.Depth < least ? least : null);
    }

    private static KitChange.FrameHeight Raised(Plan plan, Length by) => new(plan.Kit.Frame.Height + WholeLengths.BeyondMillimetre(by));
}
