namespace StudioKit.Planning.Session;

/// <summary>Visits in order, with what their changes cost.</summary>
/// <param name="Visits">The visits.</param>
/// <param name="Changes">Changes of set-up [1].</param>
/// <param name="Reframings">Changes of framing within a set-up [1].</param>
internal sealed record SessionRoute(IReadOnlyList<SessionVisit> Visits, int Changes, int Reframings)
{
    /// <summary>Nothing visited yet.</summary>
    public static SessionRoute Empty { get; } = new([], 0, 0);

    /// <summary>Where the studio stands at the end; none before the first visit.</summary>
    public (string SetUp, string Framing)? End => Visits.Count > 0 ? Visits[^1].Place : null;

    /// <summary>Goes on with other visits.</summary>
    public SessionRoute Then(SessionRoute next)
    {
        if (End is not { } from || next.Visits.Count == 0)
        {
            return new SessionRoute([.. Visits, .. next.Visits], Changes + next.Changes, Reframings + next.Reframings);
        }

        var to = next.Visits[0].Place;
        var change = from.SetUp != to.SetUp;
        return new SessionRoute(
            [.. Visits, .. next.Visits], Changes + next.Changes + (change ? 1 : 0), Reframings + next.Reframings + (!change && from != to ? 1 : 0));
    }

    /// <summary>Whether it has fewer changes of set-up, or as many and fewer of framing.</summary>
    public bool IsBetterThan(SessionRoute? other) =>
        other is null || Changes < other.Changes || (Changes == other.Changes && Reframings < other.Reframings);
}
