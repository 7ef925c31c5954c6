using UnitsNet;

namespace StudioKit.Physics.Light.Placements;

/// <summary>Moves a placement in ever smaller steps along each axis while that saves energy and serves every framing.</summary>
internal static class CompassSearch
{
    // From 40 mm down to 5 mm, about as well as a flash can be fixed to a pole in the field.
    private static readonly double[] Steps = [0.04, 0.02, 0.01, 0.005];

    private static readonly (int Right, int Back, int Distance)[] Ways = [(1, 0, 0), (-1, 0, 0), (0, 1, 0), (0, -1, 0), (0, 0, 1), (0, 0, -1)];

    public static Placement From(Placement start, PlacementSurvey survey, PlacementCase search, CancellationToken cancellation)
    {
        var best = start;
        foreach (var step in Steps)
        {
            for (var isBetter = true; isBetter;)
            {
                cancellation.ThrowIfCancellationRequested();
                PlacementCandidate[] moved = [.. Ways.Select(way => Moved(best.Candidate, way, step)).Where(candidate => IsWithin(candidate, search))];
                var next = survey.Cheaper(moved, best)
                    .Where(placement => placement.Limit == PlacementLimit.None)
                    .MinBy(placement => placement.MeanEnergy.Joules);
                isBetter = next is not null && next.MeanEnergy.Joules < best.MeanEnergy.Joules * (1 - 1e-6);
                best = isBetter ? next! : best;
            }
        }

        return best;
    }

    private static PlacementCandidate Moved(PlacementCandidate here, (int Right, int Back, int Distance) way, double step) => here with
    {
        OffsetRight = here.OffsetRight + Length.FromMeters(way.Right * step),
        OffsetBack = here.OffsetBack + Length.FromMeters(way.Back * step),
        Distance = here.Distance + Length.FromMeters(way.Distance * step),
    };

    // Within the ranges that the case spans: what it leaves out, such as a flash nearer than its pole allows, stays out.
    private static bool IsWithin(PlacementCandidate candidate, PlacementCase search) =>
        Spans(search.OffsetsRight, candidate.OffsetRight) && Spans(search.OffsetsBack, candidate.OffsetBack)
        && Spans(search.Distances, candidate.Distance) && (candidate.Count == 1 || candidate.OffsetRight > Length.Zero);

    private static bool Spans(IReadOnlyList<Length> values, Length value) => value >= values.Min() && value <= values.Max();
}
