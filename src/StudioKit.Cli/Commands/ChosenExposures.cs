using StudioKit.Kits.Quantities;
using StudioKit.Planning;
using StudioKit.Wording;

namespace StudioKit.Cli.Commands;

/// <summary>The exposures of a plan that a person asks for by the name of framing and set-up.</summary>
internal static class ChosenExposures
{
    /// <summary>Finds them.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="framing">Name of a framing, whole or as much of it as tells it from the others.</param>
    /// <param name="setUp">Name of a set-up; none for all of them.</param>
    /// <param name="problem">What is wrong with a name, and what is known; empty where all is well.</param>
    public static IReadOnlyList<ExposurePlan> Of(Plan plan, string framing, string? setUp, out string problem)
    {
        var name = Find("framing", framing, [.. plan.Framings.Select(each => each.Name)], out problem);
        if (name is null)
        {
            return [];
        }

        var lighting = setUp is null ? null : Find("set-up", setUp, [.. plan.Kit.SetUps.Select(each => each.Name)], out problem);
        if (problem.Length > 0)
        {
            return [];
        }

        IReadOnlyList<ExposurePlan> chosen = [.. plan.Exposures.Where(each => each.Framing.Name == name && (lighting is null || each.SetUp == lighting))];
        problem = chosen.Count > 0 ? "" : Unused(plan, name, lighting);
        return chosen;
    }

    private static string Unused(Plan plan, string framing, string? setUp) =>
        plan.Framings.First(each => each.Name == framing).Limit is { } limit
            ? $"'{framing}' is out of reach: {ReachText.Of(limit)}"
            : $"'{framing}' is not used by {(setUp is null ? "any set-up" : $"'{setUp}'")}.";

    private static string? Find(string kind, string written, IReadOnlyList<string> known, out string problem)
    {
        var same = known.FirstOrDefault(name => name.Equals(written.Trim(), StringComparison.OrdinalIgnoreCase));
        var within = known.Where(name => name.Contains(written.Trim(), StringComparison.OrdinalIgnoreCase)).ToList();
        var found = same ?? (within.Count == 1 ? within[0] : null);
        var meant = NearestName.Of(written, known) is { } nearest ? $" Did you mean '{nearest}'?" : "";
        problem = found is not null
            ? ""
            : $"There is no {kind} '{written}' in this plan.{meant} It has: {string.Join(", ", known)}.";
        return found;
    }
}
