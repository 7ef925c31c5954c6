using System.Numerics;

namespace StudioKit.Planning.Session;

/// <summary>Set-ups → groups that are photographed in one light: as few as there can be.</summary>
/// <remarks>
/// Set-ups make a group where each works in the light that every other is planned for, and their hours have a time in common. Of all partitions with the
/// fewest groups that is taken whose set-ups are planned for the most alike light: the stops between the brightest and the darkest of each group, added up, are
/// least. Dynamic programming over the sets of set-ups is exact for up to ten; beyond that each joins the first group that it fits, which is said.
/// </remarks>
internal static class LightGroups
{
    /// <summary>Most set-ups for which the groups are exact.</summary>
    public const int Most = 10;

    /// <summary>Finds the groups.</summary>
    /// <param name="windows">The set-ups with their windows.</param>
    public static (IReadOnlyList<LightGroup> Groups, bool Proven) Of(IReadOnlyList<SetUpWindow> windows) =>
        windows.Count <= Most ? (Exact(windows), true) : (FirstFit(windows), false);

    private static List<LightGroup> Exact(IReadOnlyList<SetUpWindow> windows)
    {
        var sets = Enumerable.Range(0, 1 << windows.Count).Select(set => set == 0 ? null : LightGroup.Of(Members(windows, set))).ToArray();
        var best = new (int Groups, double Stops, int Last)[sets.Length];
        for (var set = 1; set < best.Length; set++)
        {
            best[set] = (int.MaxValue, 0, 0);
            var lowest = 1 << BitOperations.TrailingZeroCount(set);
            for (var last = set; last > 0; last = (last - 1) & set)
            {
                if ((last & lowest) != 0 && sets[last] is { } group)
                {
                    var (groups, stops, _) = best[set ^ last];
                    var candidate = (Groups: groups + 1, Stops: stops + group.Spread, Last: last);
                    best[set] = (candidate.Groups, candidate.Stops).CompareTo((best[set].Groups, best[set].Stops)) < 0 ? candidate : best[set];
                }
            }
        }

        var found = new List<LightGroup>();
        for (var set = best.Length - 1; set > 0; set ^= best[set].Last)
        {
            found.Add(sets[best[set].Last]!);
        }

        return found;
    }

    private static List<LightGroup> FirstFit(IReadOnlyList<SetUpWindow> windows)
    {
        var found = new List<LightGroup>();
        foreach (var window in windows.OrderByDescending(window => window.Planned.AtIso100))
        {
            var (joined, place) = found.Select((group, i) => (LightGroup.Of([.. group.SetUps, window]), i)).FirstOrDefault(pair => pair.Item1 is not null);
            if (joined is null)
            {
                found.Add(LightGroup.Of([window])!);
            }
            else
            {
                found[place] = joined;
            }
        }

        return found;
    }

    private static List<SetUpWindow> Members(IReadOnlyList<SetUpWindow> windows, int set) => [.. windows.Where((_, place) => (set & (1 << place)) != 0)];
}
