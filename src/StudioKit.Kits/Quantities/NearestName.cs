namespace StudioKit.Kits.Quantities;

/// <summary>Finds the known name that a mistyped one most likely meant.</summary>
public static class NearestName
{
    // Longer words than any known name are no typing slips, and would cost time.
    private const int Longest = 60;

    /// <summary>The nearest of the known names; none where every one differs in more than a third of its letters.</summary>
    /// <param name="written">What a person wrote.</param>
    /// <param name="known">The names there are.</param>
    public static string? Of(string written, IEnumerable<string> known)
    {
        if (written.Length > Longest)
        {
            return null;
        }

        string? best = null;
        var least = int.MaxValue;
        foreach (var name in known)
        {
            var distance = Distance(written.ToUpperInvariant(), name.ToUpperInvariant());
            if (distance < least && distance <= Math.Max(1, Math.Min(name.Length, written.Length) / 3))
            {
                (best, least) = (name, distance);
            }
        }

        return best;
    }

    // Optimal string alignment: insertions, deletions, substitutions and swaps of neighbours count one each.
    private static int Distance(string a, string b)
    {
        var rows = new int[a.Length + 1, b.Length + 1];
        for (var i = 0; i <= a.Length; i++)
        {
            rows[i, 0] = i;
        }

        for (var j = 0; j <= b.Length; j++)
        {
            rows[0, j] = j;
        }

        for (var i = 1; i <= a.Length; i++)
        {
            for (var j = 1; j <= b.Length; j++)
            {
                var change = rows[i - 1, j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1);
                rows[i, j] = Math.Min(change, Math.Min(rows[i - 1, j], rows[i, j - 1]) + 1);
                if (i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1])
                {
                    rows[i, j] = Math.Min(rows[i, j], rows[i - 2, j - 2] + 1);
                }
            }
        }

        return rows[a.Length, b.Length];
    }
}
