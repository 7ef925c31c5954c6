using StudioKit.Physics;
using StudioKit.Planning.Changes;
using StudioKit.Planning.Checks;

namespace StudioKit.Planning.Mending;

/// <summary>Looks for changes of the kit after which a check passes: each candidate is planned as a whole before it is offered.</summary>
/// <param name="plan">The plan of the kit as it is.</param>
/// <param name="again">Plans the kit with changes made to it; none where it cannot be changed so, or not be read then.</param>
public sealed class CheckMender(Plan plan, Func<ValueList<KitChange>, Plan?> again)
{
    // A whole plan costs a second in a browser: who waits longer is better shown the field.
    private const int MostTries = 8;

    // One thing after the other: a flash that stands wrong in two ways is moved in two ways.
    private const int MostRounds = 3;

    /// <summary>Looks for a mend, one whole plan at a step, so that whoever asks can do something else in between.</summary>
    /// <param name="check">A check of the plan: one that fails, or that holds at the edge.</param>
    /// <returns>For each step none, where the plan was made in vain; the last is the mend, where there is any: one after which no other check fails, else the one after which the fewest do.</returns>
    public IEnumerable<CheckMend?> Steps(PlanCheck check)
    {
        ArgumentNullException.ThrowIfNull(check);
        CheckMend? harming = null;
        foreach (var (changes, after) in Tried(check))
        {
            if (after is not null && IsMended(check, after))
            {
                var mend = new CheckMend(changes, after, CheckLikeness.Broken(plan, after));
                if (mend.Breaks.Count == 0)
                {
                    yield return mend;
                    yield break;
                }

                harming = harming is null || mend.Breaks.Count < harming.Breaks.Count ? mend : harming;
            }

            yield return null;
        }

        if (harming is not null)
        {
            yield return harming;
        }
    }

    /// <summary>The mend of a check; none where none was found.</summary>
    /// <param name="check">A check of the plan: one that fails, or that holds at the edge.</param>
    public CheckMend? Of(PlanCheck check) => Steps(check).LastOrDefault();

    private IEnumerable<(ValueList<KitChange> Changes, Plan? After)> Tried(PlanCheck check)
    {
        var (made, now, tries) = ((ValueList<KitChange>)[], plan, 0);
        for (var round = 0; round < MostRounds; round++)
        {
            (ValueList<KitChange> Changes, Plan After, double Left)? best = null;
            foreach (var candidate in Candidates(check, now))
            {
                if (tries++ == MostTries)
                {
                    yield break;
                }

                ValueList<KitChange> changes = [.. made, .. candidate];
                var after = again(changes);
                yield return (changes, after);
                if (after is not null && Left(check, after) is var left && left < (best?.Left ?? Left(check, now)))
                {
                    best = (changes, after, left);
                }
            }

            if (best is not { } next || IsMended(check, next.After))
            {
                yield break;
            }

            (made, now) = (next.Changes, next.After);
        }
    }

    private static IEnumerable<ValueList<KitChange>> Candidates(PlanCheck check, Plan now) =>
        now.Checks.FirstOrDefault(found => CheckLikeness.IsSame(check, found)) is { } found ? MendCandidates.For(found, now) : [];

    // A check that passed at the edge is mended when nothing of it is at the edge any more.
    private static bool IsMended(PlanCheck check, Plan after) => check.Passed ? Left(check, after) == 0 : CheckLikeness.PassesIn(check, after);

    // How much of it is left to mend: what stands in the way, counted, or by how much the demand is over the capacity.
    private static double Left(PlanCheck check, Plan after) => after.Checks.Where(found => CheckLikeness.IsSame(check, found)).Sum(found =>
        found.Findings.Count > 0 ? found.Findings.Sum(Weight) : found.Passed ? 0 : Math.Max(1, found.Ratio ?? found.Parts.Count));

    private static double Weight(CheckFinding finding) => finding is CheckFinding.OfExposure { Exposure.IsUsable: false } ? 2 : 1;
}
