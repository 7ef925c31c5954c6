namespace StudioKit.Field.Log.Release;

/// <summary>Finds sessions of the same days or nearly the same place as another, without looking through all of them for each.</summary>
internal sealed class NearSessions
{
    // Within this of a place of which only the country is told, another's exact place says too much (common practice, no source): the widest of the
    // usual cells, a tenth of a degree.
    private const double NearDegrees = 0.1;

    private readonly ILookup<string, Candidate> _byDays;
    private readonly Spot[] _spots;

    /// <summary>The sessions among which is looked.</summary>
    /// <param name="sessions">Sessions, each with its place in order; those whose place is not known are passed over.</param>
    public NearSessions(IEnumerable<FieldSession> sessions)
    {
        var candidates = sessions.Select((session, place) => new Candidate(place, session)).Where(candidate => candidate.Session.Latitude is not null).ToList();
        _byDays = candidates.ToLookup(candidate => RecordText.EventDays(candidate.Session), StringComparer.Ordinal);

        // Many sessions are held at one spot; in order of latitude, those out of reach are passed over together.
        _spots =
        [
            .. candidates.Where(candidate => candidate.Session.Longitude is not null).GroupBy(candidate => (candidate.Session.Latitude!.Value, candidate.Session.Longitude!.Value))
                .Select(group => new Spot(group.Key.Item1, group.Key.Item2, group.First(), group.Count())).OrderBy(spot => spot.Latitude),
        ];
    }

    /// <summary>The first of those near a session, and how many there are; none where there is none.</summary>
    public (FieldSession First, int Count)? Of(FieldSession session)
    {
        var spots = SpotsNear(session).ToList();
        var days = _byDays[RecordText.EventDays(session)].Where(candidate => !IsNear(session, candidate.Session)).ToList();
        var first = spots.Select(spot => spot.First).Concat(days).MinBy(candidate => candidate.Place);
        return first is null ? null : (first.Session, days.Count + spots.Sum(spot => spot.Count));
    }

    private static bool IsNear(FieldSession one, FieldSession other) => IsNear(one, other.Latitude, other.Longitude);

    // What is not known is near to nothing.
    private static bool IsNear(FieldSession session, double? latitude, double? longitude) =>
        Math.Abs((session.Latitude - latitude) ?? double.NaN) < NearDegrees && Math.Abs((session.Longitude - longitude) ?? double.NaN) < NearDegrees;

    private IEnumerable<Spot> SpotsNear(FieldSession session)
    {
        // A little more than is near, so that no rounding leaves one out.
        var (from, to) = (session.Latitude - (1.01 * NearDegrees), session.Latitude + (1.01 * NearDegrees));
        for (var i = from is { } least ? FirstFrom(least) : _spots.Length; i < _spots.Length && _spots[i].Latitude <= to; i++)
        {
            if (IsNear(session, _spots[i].Latitude, _spots[i].Longitude))
            {
                yield return _spots[i];
            }
        }
    }

    private int FirstFrom(double latitude)
    {
        var (low, high) = (0, _spots.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = _spots[middle].Latitude < latitude ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private sealed record Candidate(int Place, FieldSession Session);

    private sealed record Spot(double Latitude, double Longitude, Candidate First, int Count);
}
