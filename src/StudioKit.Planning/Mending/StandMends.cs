using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;
using StudioKit.Planning.Standing;

namespace StudioKit.Planning.Mending;

/// <summary>Lights about the subject turned to where nothing is wrong with them, or held by something else.</summary>
internal static class StandMends
{
    private const int Directions = 3;

    /// <summary>Every light concerned turned at once, by the least that does; then one after the other.</summary>
    public static IEnumerable<ValueList<KitChange>> Turned(PlanCheck check, Plan plan)
    {
        var search = new StandSearch(plan);
        var turns = Concerned(check).Select(light => search.Directions(light.SetUp, light.Place).Take(Directions).Select(to => (KitChange)new KitChange.Turn(light.SetUp, light.Place, to)).ToList()).ToList();
        if (turns.Count > 1 && turns.TrueForAll(choices => choices.Count > 0))
        {
            yield return [.. turns.Select(choices => choices[0])];
        }

        foreach (var turn in turns.SelectMany(choices => choices))
        {
            yield return [turn];
        }
    }

    /// <summary>Turned to where the holder reaches, else held by another.</summary>
    public static IEnumerable<ValueList<KitChange>> Held(PlanCheck check, Plan plan)
    {
        var search = new StandSearch(plan);
        return Turned(check, plan).Take(Directions + 1)
            .Concat(Concerned(check).SelectMany(light => search.Holders(light.SetUp, light.Place).Select(holder => (ValueList<KitChange>)[new KitChange.Hold(light.SetUp, light.Place, holder)])));
    }

    private static IEnumerable<(string SetUp, int Place)> Concerned(PlanCheck check) =>
        check.Findings.OfType<CheckFinding.OfStand>().Select(finding => (finding.Stand.SetUp, finding.Stand.Place)).Distinct();
}
