using StudioKit.Physics.Light.Solving;

namespace StudioKit.Physics.Light.Placements;

/// <summary>Finds all placements that could be the best or stand on the frontier, and works out wholly no more than it must.</summary>
/// <remarks>
/// What the outlines of the framings show bounds what all their points can: the darkest point is at most so bright and the brightest at least so bright, hence a
/// placement's energy and spread are at least what the outlines give. One that is beaten in both by a placement that is known wholly is neither the best nor on the
/// frontier; nor is one whose outlines break a limit. All others are worked out wholly, so the answer is that of a search that skips none.
/// </remarks>
internal sealed class PlacementSurvey(PlacementJudge judge, bool isAlone, CancellationToken cancellation)
{
    // Far over what rounding does to energy or spread, so that it never decides what is skipped.
    private const double Slack = 1e-9;

    // As many are worked out side by side before it is looked again at what they beat.
    private const int Together = 16;

    /// <summary>The placements that were worked out wholly, in the order of the candidates; all of them where none serves every framing.</summary>
    public IReadOnlyList<Placement> Of(IReadOnlyList<PlacementCandidate> candidates, Action onEach)
    {
        var (bounds, known) = (new Placement[candidates.Count], new Placement?[candidates.Count]);
        ParallelWork.For(
            candidates.Count,
            i =>
            {
                bounds[i] = judge.Bound(candidates[i]);
                onEach();
            },
            isAlone,
            cancellation);

        // Least energy first, as what comes early beats most.
        int[] hopeful = [.. Enumerable.Range(0, bounds.Length).Where(i => MayServe(bounds[i])).OrderBy(i => bounds[i].MeanEnergy.Joules)];
        List<Placement> served = [];
        foreach (var next in Rounds(hopeful, i => !IsBeaten(bounds[i], served)))
        {
            WorkOut(candidates, next, known);
            served.AddRange(next.Select(i => known[i]!).Where(placement => placement.Limit == PlacementLimit.None));
        }

        if (served.Count == 0)
        {
            WorkOut(candidates, [.. Enumerable.Range(0, candidates.Count).Where(i => known[i] is null)], known);
        }

        return [.. known.OfType<Placement>()];
    }

    /// <summary>Works out wholly, in their order, those that may need less energy than one that is known.</summary>
    public IReadOnlyList<Placement> Cheaper(IReadOnlyList<PlacementCandidate> candidates, Placement known)
    {
        var found = new Placement?[candidates.Count];
        ParallelWork.For(
            candidates.Count,
            i => found[i] = judge.Bound(candidates[i]).MeanEnergy.Joules < known.MeanEnergy.Joules ? judge.Judge(candidates[i]) : null,
            isAlone,
            cancellation);
        return [.. found.OfType<Placement>()];
    }

    private static IEnumerable<int[]> Rounds(int[] waiting, Func<int, bool> isOpen)
    {
        for (var at = 0; at < waiting.Length;)
        {
            List<int> next = [];
            for (; at < waiting.Length && next.Count < Together; at++)
            {
                if (isOpen(waiting[at]))
                {
                    next.Add(waiting[at]);
                }
            }

            yield return [.. next];
        }
    }

    private void WorkOut(IReadOnlyList<PlacementCandidate> candidates, int[] which, Placement?[] into) =>
        ParallelWork.For(which.Length, i => into[which[i]] = judge.Judge(candidates[which[i]]), isAlone, cancellation);

    private static bool MayServe(Placement bound) => bound.Limit < PlacementLimit.PanelTooSmall && bound.Framings.All(framing =>
        framing.Power <= 1 + Slack && framing.Brightest.Value <= framing.Framing.HighestMargin.Value + Slack);

    private static bool IsBeaten(Placement bound, List<Placement> served) => served.Exists(placement =>
        placement.MeanEnergy.Joules < bound.MeanEnergy.Joules * (1 - Slack) && placement.Spread.Value < bound.Spread.Value - Slack);
}
