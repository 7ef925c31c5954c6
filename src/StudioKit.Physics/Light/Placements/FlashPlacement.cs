using StudioKit.Physics.Light.Checks;
using StudioKit.Physics.Sources;

namespace StudioKit.Physics.Light.Placements;

/// <summary>Searches the place of the flash below that needs the least energy while every framing stays white enough and not too white.</summary>
/// <remarks>
/// Every combination of the case's lists is weighed: worked out, or shown by a bound to be beaten by another. Then the best is moved in ever smaller steps
/// while that saves energy. The answer is that of working all of them out, and does not depend on the number of processors. Flash bodies are left out: solve the chosen placement once more with them.
/// </remarks>
public static class FlashPlacement
{
    /// <summary>Weighs every candidate and picks from them.</summary>
    /// <param name="search">What the flash must do and what may be tried.</param>
    /// <param name="progress">Told about every hundredth of the work; none where nobody watches.</param>
    /// <param name="cancellation">Stops the search.</param>
    /// <returns>The recommended placement and the frontier of energy against evenness.</returns>
    /// <exception cref="ArgumentException">A list of the case is empty, a view is impossible, or a count is not 1 or 2.</exception>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    [Source("Derived", "full search on a grid, then compass search; power from the darkest visible point by linearity")]
    public static PlacementResult Search(
        PlacementCase search, IProgress<PlacementProgress>? progress = null, CancellationToken cancellation = default) =>
        Search(search, isAlone: false, progress, cancellation);

    /// <summary>The same, on one processor alone where that is asked for.</summary>
    internal static PlacementResult Search(PlacementCase search, bool isAlone, IProgress<PlacementProgress>? progress, CancellationToken cancellation)
    {
        ArgumentNullException.ThrowIfNull(search);
        Refuse(search);
        var judge = new PlacementJudge(search);
        var candidates = PlacementGrid.Candidates(search, judge.Target);
        var survey = new PlacementSurvey(judge, isAlone, cancellation);
        var placements = survey.Of(candidates, Counting(candidates.Count, progress));
        var best = placements.Where(placement => placement.Limit == PlacementLimit.None).MinBy(placement => placement.MeanEnergy.Joules);
        if (best is null)
        {
            var nearest = placements.OrderBy(placement => placement.Limit).ThenBy(placement => PlacementJudge.Excess(search, placement)).FirstOrDefault();
            return new PlacementResult(null, [], nearest, PlacementAdvice.For(search, nearest), candidates.Count);
        }

        var refined = CompassSearch.From(best, survey, search, cancellation);
        return new PlacementResult(refined, Frontier([.. placements, refined]), null, null, candidates.Count);
    }

    private static Action Counting(int count, IProgress<PlacementProgress>? progress)
    {
        var (done, step) = (0, Math.Max(1, count / 100));
        return () =>
        {
            var now = Interlocked.Increment(ref done);
            if (now % step == 0 || now == count)
            {
                progress?.Report(new PlacementProgress(now, count));
            }
        };
    }

    private static List<Placement> Frontier(IReadOnlyList<Placement> placements)
    {
        List<Placement> frontier = [];
        var served = placements
            .Where(placement => placement.Limit == PlacementLimit.None)
            .OrderBy(placement => placement.MeanEnergy.Joules).ThenBy(placement => placement.Spread.Value);
        foreach (var placement in served)
        {
            if (frontier.Count == 0 || placement.Spread.Value < frontier[^1].Spread.Value)
            {
                frontier.Add(placement);
            }
        }

        return frontier;
    }

    private static void Refuse(PlacementCase search)
    {
        var isEmpty = search.Framings.Count == 0 || search.Flashes.Count == 0 || search.PanelHeights.Count == 0 || search.Surrounds.Count == 0
            || search.Distances.Count == 0 || search.OffsetsRight.Count == 0 || search.OffsetsBack.Count == 0 || search.Aims.Count == 0;
        if (isEmpty || search.Counts.Count == 0 || search.Counts.Any(count => count is not (1 or 2)))
        {
            throw new ArgumentException("Every list of the case needs an entry, and flashes come as 1 or 2.", nameof(search));
        }

        SceneCheck.Refuse([.. search.Framings.SelectMany(framing => ViewCheck.Problems(search.Panel, framing.View))]);
        SceneCheck.Refuse([.. from height in search.PanelHeights
                              from surround in search.Surrounds
                              from problem in SceneCheck.Problems(search.Panel with { Height = height }, surround)
                              select problem]);
    }
}
