using StudioKit.Kits;
using StudioKit.Kits.Studio;
using StudioKit.Kits.Uprights;
using StudioKit.Physics;
using StudioKit.Planning.Changes;
using UnitsNet;

namespace StudioKit.Planning.Mending;

/// <summary>Panels and camera angles that go together.</summary>
internal static class StudioMends
{
    private const double AngleStep = 5;

    /// <summary>The panel that the framings need, in whole centimetres.</summary>
    public static IEnumerable<ValueList<KitChange>> LargerPanel(Plan plan)
    {
        var (width, depth) = (Larger(plan.Panel.Width, plan.Panel.RequiredWidth), Larger(plan.Panel.Depth, plan.Panel.RequiredDepth));
        if (width is not null || depth is not null)
        {
            yield return [new KitChange.Recut(width, depth)];
        }
    }

    /// <summary>A frame that sweeps the sheet up behind the subject, unless poles of another sheet are clipped to its back rail, or a camera that looks down more steeply.</summary>
    public static IEnumerable<ValueList<KitChange>> Swept(Plan plan) => plan.Kit.Uprights.Any(upright => upright.Carrier == UprightCarrier.Frame)
        ? SteeperCamera(plan)
        : SteeperCamera(plan).Prepend([new KitChange.FrameShape(FrameKind.SweptTable)]);

    /// <summary>The least change of the camera's angles after which a panel reaches behind each framing, and need not be swept for it.</summary>
    public static IEnumerable<ValueList<KitChange>> SteeperCamera(Plan plan)
    {
        var setUps = PlanStages.OnPanel(plan.Kit).ToList();
        var lowest = setUps.SelectMany(setUp => setUp.CameraPitches).Select(pitch => pitch.Degrees).DefaultIfEmpty(90).Min();
        for (var angle = (Math.Floor(lowest / AngleStep) + 1) * AngleStep; angle < 90; angle += AngleStep)
        {
            ValueList<KitChange> raised = [.. from setUp in setUps
                                              from pitch in setUp.CameraPitches.Select((pitch, place) => (pitch, place))
                                              where pitch.pitch.Degrees < angle
                                              select new KitChange.Pitch(setUp.Name, pitch.place, Angle.FromDegrees(angle))];
            if (IsReached(plan, raised.Aggregate(plan.Kit, (kit, change) => change.Apply(kit))))
            {
                yield return raised;
                yield break;
            }
        }
    }

    private static bool IsReached(Plan plan, KitSpec kit)
    {
        var panel = PlanStages.Panel(kit, plan.PlannedFramings);
        return panel.Unfilled.Count == 0 && (panel.SweepRadius is null || kit.Frame.Kind == FrameKind.SweptTable);
    }

    private static Length? Larger(Length given, Length needed) => needed > given ? WholeLengths.UpToCentimetre(needed) : null;
}
