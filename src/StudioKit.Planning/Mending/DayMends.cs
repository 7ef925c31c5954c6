using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Packing;

namespace StudioKit.Planning.Mending;

/// <summary>Less to carry, and less to do in a day.</summary>
internal static class DayMends
{
    private const int MostTries = 4;

    /// <summary>What makes the kit lighter and loses no framing, all of it together.</summary>
    public static IEnumerable<ValueList<KitChange>> Lighter(PlanCheck check) => check.Remedy?.Home is { Lighter.Count: > 0, Left.Count: 0, Reached: true } home
        ? [[.. home.Lighter.SelectMany(step => Of(step.Change))]]
        : [];

    /// <summary>Fewer frames of an animal, from as many as the limit leaves time for.</summary>
    public static IEnumerable<ValueList<KitChange>> HeldShorter(PlanCheck check, Plan plan)
    {
        var now = plan.Kit.Subjects.FirstOrDefault(subject => subject.Name == check.Parts[0])?.Frames ?? plan.Kit.Session.Frames;
        return Fewer(now, check.Ratio ?? 1).Select(count => (ValueList<KitChange>)[new KitChange.Frames(check.Parts[0], count)]);
    }

    /// <summary>So many more sets of cells as the session needs.</summary>
    public static IEnumerable<ValueList<KitChange>> MoreCells(PlanCheck check, Plan plan)
    {
        if (check.Remedy?.Amount is CheckAmount.HowMany { Value: > 0 } more && plan.Kit.Flashes.FirstOrDefault(flash => flash.Name == check.Parts[0]) is { } flash)
        {
            yield return [new KitChange.SpareSets(flash.Name, flash.SpareSets + more.Value)];
        }
    }

    /// <summary>Fewer rounds, from as many as the hours leave time for; nothing where not one fits.</summary>
    public static IEnumerable<ValueList<KitChange>> FewerRounds(PlanCheck check, Plan plan) => check.Remedy?.Kind != CheckRemedyKind.FewerRounds ? []
        : Fewer(plan.Kit.Session.Rounds, check.Ratio ?? 1).Select(count => (ValueList<KitChange>)[new KitChange.Rounds(count)]);

    private static IEnumerable<int> Fewer(int now, double ratio)
    {
        var most = Math.Min(now - 1, (int)Math.Floor(now / ratio));
        return new[] { most, most - 1, most / 2, 1 }.Where(count => count >= 1 && count < now).Distinct().Take(MostTries);
    }

    private static IEnumerable<KitChange> Of(LighterChange change) => change switch
    {
        LighterChange.FewerCells cells => cells.SpareSets.Select(sets => new KitChange.SpareSets(sets.Key, sets.Value)),
        LighterChange.SmallerPanel panel => [new KitChange.Recut(panel.Width, panel.Depth)],
        LighterChange.LighterPipe pipe => [new KitChange.Strengthen(new StructuralChange.OtherPipe(pipe.Stocked))],
        LighterChange.ThinnerSheet sheet => [new KitChange.Strengthen(new StructuralChange.OtherSheet(sheet.Thickness))],
        _ => throw new ArgumentOutOfRangeException(nameof(change), change, "Not a way to carry less."),
    };
}
