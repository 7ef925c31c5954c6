using StudioKit.Kits.Cameras;
using StudioKit.Physics;
using StudioKit.Physics.Optics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Mending;

/// <summary>Other magnifications for a lens that does not come to one, or touches its subject.</summary>
internal static class FramingMends
{
    private const double Same = 1e-6;

    /// <summary>The nearest magnification that the lens comes to, or none in its place.</summary>
    public static IEnumerable<ValueList<KitChange>> WithinReach(PlanCheck check, Plan plan)
    {
        if (check.Findings.OfType<CheckFinding.OutOfReach>().FirstOrDefault()?.Limit is not { } limit || Wanted(plan, check.Parts[0], limit.Wanted) is not var (lens, place))
        {
            yield break;
        }

        if (limit.Nearest is { } nearest && Rounded(nearest, limit.Wanted) is var to && to.Value > 0 && lens.Magnifications.All(other => Math.Abs((other.Value / to.Value) - 1) > 0.02))
        {
            yield return [new KitChange.Magnify(lens.Name, place, to)];
        }

        foreach (var without in Without(lens, place))
        {
            yield return without;
        }
    }

    /// <summary>A lower magnification, in steps of a quarter, until the subject is clear of the glass.</summary>
    public static IEnumerable<ValueList<KitChange>> OffTheGlass(PlanCheck check, Plan plan)
    {
        if (plan.Framings.FirstOrDefault(framing => framing.Name == check.Parts[0]) is not { } touching || Wanted(plan, touching.Lens, touching.Magnification) is not var (lens, place))
        {
            return [];
        }

        return Enumerable.Range(1, 8)
            .Select(step => Rounded(new Magnification(touching.Magnification.Value / Math.Pow(1.25, step)), touching.Magnification))
            .Where(to => lens.Magnifications.All(other => Math.Abs((other.Value / to.Value) - 1) > 0.02))
            .Select(to => new KitChange.Magnify(lens.Name, place, to))
            .Where(change => PlanStages.Framings(change.Apply(plan.Kit)).Where(framing => framing.Plan.Lens == lens.Name).All(framing => framing.Plan.WorkingDistance.Meters > 0 || framing.Plan.Magnification.Value > change.To!.Value.Value + Same))
            .Take(1).Select(change => (ValueList<KitChange>)[change])
            .Concat(Without(lens, place));
    }

    private static (LensSpec Lens, int Place)? Wanted(Plan plan, string lens, Magnification wanted)
    {
        if (plan.Kit.Lenses.FirstOrDefault(one => one.Name == lens) is not { } found)
        {
            return null;
        }

        var place = found.Magnifications.ToList().FindIndex(one => Math.Abs((one.Value / wanted.Value) - 1) < Same);
        return place < 0 ? null : (found, place);
    }

    private static IEnumerable<ValueList<KitChange>> Without(LensSpec lens, int place) =>
        lens.Magnifications.Count > 1 ? [[new KitChange.Magnify(lens.Name, place, null)]] : [];

    // As it is written, on the side that the lens comes to: a magnification too large is rounded down, one too small up.
    private static Magnification Rounded(Magnification nearest, Magnification wanted)
    {
        var isDown = nearest.Value < wanted.Value;
        var number = nearest.Value < 1 ? 1 / nearest.Value : nearest.Value;
        var rounded = (isDown == nearest.Value < 1 ? Math.Ceiling((number * 100) - 1e-6) : Math.Floor((number * 100) + 1e-6)) / 100;
        return new Magnification(nearest.Value < 1 ? 1 / rounded : rounded);
    }
}
