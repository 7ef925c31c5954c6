namespace StudioKit.Planning.Session;

/// <summary>Order of subjects and set-ups that changes least.</summary>
/// <remarks>
/// Visits that belong together, as those of one animal do, follow each other in any order. Such groups come in ranks, which keep their order;
/// within a rank every order is allowed. Dynamic programming over the sets of groups done and the place where the studio stands (Held and Karp's
/// scheme) is exact for up to ten groups in a rank and five visits each, or any number at one place; beyond that the nearest comes next, which is said.
/// </remarks>
internal static class SessionOrder
{
    /// <summary>Most groups in a rank for which the order is exact.</summary>
    public const int MostGroups = 10;

    private const int MostVisits = 5;

    /// <summary>Finds the route.</summary>
    /// <param name="ranks">Ranks in order; in each, the groups of visits.</param>
    public static (SessionRoute Route, bool Proven) Of(IReadOnlyList<IReadOnlyList<IReadOnlyList<SessionVisit>>> ranks)
    {
        IReadOnlyList<SessionRoute> routes = [SessionRoute.Empty];
        var proven = true;
        foreach (var rank in ranks)
        {
            var groups = rank.Where(visits => visits.Count > 0).Select(OwnRoutes).ToList();
            proven &= groups.Count <= MostGroups && rank.All(visits => visits.Count <= MostVisits || AtOnePlace(visits));
            routes = groups.Count <= MostGroups ? Exact(routes, groups) : [Nearest(Best(routes), groups)];
        }

        return (Best(routes), proven);
    }

    private static List<SessionRoute> Exact(IReadOnlyList<SessionRoute> starts, List<IReadOnlyList<SessionRoute>> groups)
    {
        var done = new Dictionary<(string SetUp, string Framing), SessionRoute>[1 << groups.Count];
        done[0] = [];
        foreach (var start in starts)
        {
            Keep(done[0], start);
        }

        for (var set = 0; set < done.Length; set++)
        {
            foreach (var route in done[set].Values)
            {
                for (var group = 0; group < groups.Count; group++)
                {
                    var with = set | (1 << group);
                    if (with != set)
                    {
                        done[with] ??= [];
                        groups[group].ToList().ForEach(own => Keep(done[with], route.Then(own)));
                    }
                }
            }
        }

        return [.. done[^1].Values];
    }

    private static SessionRoute Nearest(SessionRoute start, List<IReadOnlyList<SessionRoute>> groups)
    {
        var left = groups.ToList();
        var route = start;
        while (left.Count > 0)
        {
            var (next, group) = left.Select(own => (Route: Best(own.Select(route.Then)), Group: own))
                .Aggregate((best, other) => other.Route.IsBetterThan(best.Route) ? other : best);
            route = next;
            left.Remove(group);
        }

        return route;
    }

    // The cheapest route of a group's visits for each pair of first and last place.
    private static IReadOnlyList<SessionRoute> OwnRoutes(IReadOnlyList<SessionVisit> visits)
    {
        if (visits.Count > MostVisits || AtOnePlace(visits))
        {
            return [visits.OrderBy(visit => visit.Place).Aggregate(SessionRoute.Empty, (route, visit) => route.Then(new([visit], 0, 0)))];
        }

        var best = new Dictionary<((string, string), (string, string)), SessionRoute>();
        foreach (var route in Orders(SessionRoute.Empty, visits))
        {
            var ends = (route.Visits[0].Place, route.Visits[^1].Place);
            if (route.IsBetterThan(best.GetValueOrDefault(ends)))
            {
                best[ends] = route;
            }
        }

        return [.. best.Values];
    }

    private static IEnumerable<SessionRoute> Orders(SessionRoute route, IReadOnlyList<SessionVisit> left)
    {
        if (left.Count == 0)
        {
            return [route];
        }

        return left.SelectMany(visit => Orders(route.Then(new([visit], 0, 0)), [.. left.Where(other => other != visit)]));
    }

    private static bool AtOnePlace(IReadOnlyList<SessionVisit> visits) => visits.All(visit => visit.Place == visits[0].Place);

    private static void Keep(Dictionary<(string, string), SessionRoute> routes, SessionRoute route)
    {
        var end = route.End ?? ("", "");
        if (route.IsBetterThan(routes.GetValueOrDefault(end)))
        {
            routes[end] = route;
        }
    }

    private static SessionRoute Best(IEnumerable<SessionRoute> routes) =>
        routes.Aggregate((best, other) => other.IsBetterThan(best) ? other : best);
}
