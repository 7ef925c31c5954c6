using StudioKit.Kits.SetUps;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Light.Standing;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Covers;
using StudioKit.Planning.SetUps;
using UnitsNet;

namespace StudioKit.Planning.Mending;

/// <summary>Covers with room, on the sheet, seen through from where nothing shows in them, in the shade.</summary>
internal static class CoverMends
{
    private static readonly double[] Elevations = [60, 30, 75];

    /// <summary>Another cover of the kit.</summary>
    public static IEnumerable<ValueList<KitChange>> Others(PlanCheck check, Plan plan) =>
        plan.Kit.Covers.Where(cover => cover.Name != check.Parts[0] && cover.Shape == CoverOf(check, plan)?.Shape)
            .Select(cover => (ValueList<KitChange>)[new KitChange.UnderCover(check.Parts[1], cover.Name)]);

    /// <summary>The panel that its foot needs, in whole centimetres.</summary>
    public static IEnumerable<ValueList<KitChange>> OnSheet(PlanCheck check, Plan plan)
    {
        if (check.Remedy?.Amount is CheckAmount.TwoSides sides)
        {
            yield return [new KitChange.Recut(Larger(plan.Panel.Width, sides.Width), Larger(plan.Panel.Depth, sides.Depth))];
        }

        foreach (var other in Others(check, plan))
        {
            yield return other;
        }
    }

    /// <summary>The clear angle that is nearest to each angle that is spoilt; else a flash turned, the cover lifted, or another.</summary>
    public static IEnumerable<ValueList<KitChange>> Clear(PlanCheck check, Plan plan)
    {
        if (CoverOf(check, plan) is not { } cover)
        {
            yield break;
        }

        if (Pitched(plan.Kit.SetUps.First(setUp => setUp.Name == cover.SetUp), cover) is { Count: > 0 } pitched)
        {
            yield return pitched;
        }

        foreach (var change in Turned(plan.Kit.SetUps.First(setUp => setUp.Name == cover.SetUp), cover).Concat(Lifted(cover)).Concat(Others(check, plan)))
        {
            yield return change;
        }
    }

    /// <summary>Shade over the place.</summary>
    public static IEnumerable<ValueList<KitChange>> Cooler(PlanCheck check, Plan plan)
    {
        if (CoverOf(check, plan) is { ShadeStops: > 0 } cover)
        {
            // To the next half stop, as nobody hangs up shade more finely.
            var by = new Stops(Math.Ceiling(cover.ShadeStops * 2) / 2);
            var setUp = plan.Kit.SetUps.First(candidate => candidate.Name == cover.SetUp);
            foreach (var putUp in CommonSymptoms.Shaded(plan.Kit, setUp))
            {
                yield return putUp;
            }

            yield return [new KitChange.Shade(setUp.Name, new ExposureValue((setUp.Ambient ?? plan.Kit.Site.Ambient).AtIso100 - by.Value), by)];
        }
    }

    private static CoverPlan? CoverOf(PlanCheck check, Plan plan) => plan.Covers.FirstOrDefault(cover => cover.Cover == check.Parts[0] && cover.SetUp == check.Parts[1]);

    private static IEnumerable<ValueList<KitChange>> Lifted(CoverPlan cover) => cover.Water > Length.Zero ? [] : [[new KitChange.Lift(cover.Cover)]];

    // The first flash that shows, raised or lowered where it stands.
    private static IEnumerable<ValueList<KitChange>> Turned(SetUpSpec setUp, CoverPlan cover)
    {
        var shown = cover.Framings.SelectMany(framing => framing.Views).FirstOrDefault(view => view.Faults.Contains(CoverFault.Reflection))?.Shown[0];
        var place = shown is null ? -1 : setUp.Lights.ToList().FindIndex(light => light.Flash == shown.Flash && light.Role == shown.Role);
        return place < 0 ? [] : Elevations
            .Select(elevation => new LightDirection(setUp.Lights[place].From!.Value.Azimuth, Angle.FromDegrees(elevation)))
            .Select(to => (ValueList<KitChange>)[new KitChange.Turn(setUp.Name, place, to)]);
    }

    private static ValueList<KitChange> Pitched(SetUpSpec setUp, CoverPlan cover)
    {
        var clear = cover.ClearForAll.SelectMany(range => new[] { range.From, range.To }).ToList();
        var spoilt = cover.Framings.SelectMany(framing => framing.Views).Where(view => view.Faults.Count > 0).Select(view => view.Pitch.Degrees).ToHashSet();
        return clear.Count == 0 ? [] : [.. setUp.CameraPitches.Select((pitch, place) => (pitch, place))
            .Where(pair => spoilt.Contains(pair.pitch.Degrees))
            .Select(pair => new KitChange.Pitch(setUp.Name, pair.place, clear.MinBy(angle => Math.Abs(angle.Degrees - pair.pitch.Degrees))))];
    }

    private static Length? Larger(Length given, Length needed) => needed > given ? WholeLengths.UpToCentimetre(needed) : null;
}
