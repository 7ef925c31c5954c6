namespace StudioKit.Planning.Checks;

/// <summary>Finds the keys of a kit that a path of sections means, where lists stand for the entries concerned.</summary>
internal static class KitKeyPaths
{
    /// <summary>Every key of the kit under a path.</summary>
    /// <param name="pattern">Path of sections, e.g. <c>set-ups.lights.distance</c>.</param>
    /// <param name="parts">Names of what it is about; entries of a list that bear one of them go before all others.</param>
    /// <param name="plan">The plan with what the kit says.</param>
    public static IEnumerable<KitKey> Under(string pattern, IReadOnlyList<string> parts, Plan plan)
    {
        var found = Known(plan).Where(key => Fits(WithoutPlace(key.Path), pattern)).GroupBy(key => WithoutPlace(key.Path)).ToList();
        if (found.Count == 0)
        {
            return [new KitKey(pattern, null)];
        }

        var most = found.Max(keys => Concerned(keys.Key, parts, plan));
        return found.Where(keys => Concerned(keys.Key, parts, plan) == most).Select(keys => new KitKey(
            keys.Key, Joined(keys.Select(key => key.Value)), Joined(keys.Select(key => key.Standing))));
    }

    private static IEnumerable<KitKey> Known(Plan plan) => plan.Written.Select(pair => new KitKey(pair.Key, pair.Value))
        .Concat(plan.Defaults.Select(entry => new KitKey(entry.Path, null, entry.Value)));

    private static string? Joined(IEnumerable<string?> values) => values.OfType<string>().ToList() is { Count: > 0 } all ? string.Join(", ", all) : null;

    // A list of values stands under its key: camera-pitch[0] and camera-pitch[1] are one key.
    private static string WithoutPlace(string path) => path.EndsWith(']') ? path[..path.LastIndexOf('[')] : path;

    private static bool Fits(string path, string pattern)
    {
        var (steps, wanted) = (path.Split('.'), pattern.Split('.'));
        return steps.Length == wanted.Length && steps.Zip(wanted).All(pair => pair.First == pair.Second || pair.First.Split('[')[0] == pair.Second);
    }

    // How many of the entries on the way to a key bear a name that the check is about.
    private static int Concerned(string path, IReadOnlyList<string> parts, Plan plan)
    {
        var count = 0;
        for (var end = path.IndexOf(']', StringComparison.Ordinal); end >= 0; end = path.IndexOf(']', end + 1))
        {
            var entry = path[..(end + 1)];
            count += parts.Contains(plan.Written.GetValueOrDefault(entry + ".name"), StringComparer.Ordinal)
                || parts.Contains(plan.Written.GetValueOrDefault(entry + ".flash"), StringComparer.Ordinal) ? 1 : 0;
        }

        return count;
    }
}
