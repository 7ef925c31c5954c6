using StudioKit.Planning;
using StudioKit.Planning.Checks;

namespace StudioKit.Wording;

/// <summary>The verdict on a whole plan in a few sentences.</summary>
public static class StudioVerdictText
{
    /// <summary>Whether the studio can be built, whether the cards hold, and what else stands in the way.</summary>
    /// <param name="verdict">The verdict.</param>
    public static string Of(StudioVerdict verdict)
    {
        ArgumentNullException.ThrowIfNull(verdict);
        return string.Join(' ', new[]
        {
            Building(verdict), Cards(verdict),
            Otherwise("It cannot be carried as the kit has it", verdict.Failed(CheckConcern.Carrying)),
            Otherwise("The day does not work out", verdict.Failed(CheckConcern.Day)),
        }.Where(sentence => sentence.Length > 0));
    }

    private static string Building(StudioVerdict verdict) => (verdict.Builds, verdict.CanBeBuilt) switch
    {
        (_, false) => Otherwise("This studio cannot be built as the kit has it", verdict.Failed(CheckConcern.Building)),
        (true, _) => "This studio can be built.",
        _ => "No set-up needs a panel, so there is nothing to build.",
    };

    private static string Cards(StudioVerdict verdict)
    {
        var edge = verdict.AtTheEdge switch
        {
            0 => "",
            1 => ", 1 of them at the edge",
            var count => $", {count} of them at the edge",
        };
        var others = verdict.Failed(CheckConcern.Cards).Where(check => check.Kind != PlanCheckKind.Exposure).ToList();
        var counted = (verdict.Cards, verdict.Failing) switch
        {
            (0, _) => "There are no cards: no set-up reaches a framing.",
            (1, 0) => $"The one card holds{(verdict.AtTheEdge == 1 ? ", at the edge" : "")}.",
            (2, 0) => $"Both cards hold{edge}.",
            (var all, 0) => $"All {all} cards hold{edge}.",
            var (all, failing) => $"{all - failing} of {all} cards hold{edge}; {failing} {(failing == 1 ? "does" : "do")} not.",
        };
        return others.Count == 0 ? counted : $"{counted} {Otherwise("Behind the cards", others)}";
    }

    private static string Otherwise(string opening, IReadOnlyList<PlanCheck> checks) =>
        checks.Count == 0 ? "" : $"{opening}: {string.Join("; ", checks.Select(check => Lower(CheckText.Name(check))).Distinct())}.";

    private static string Lower(string name) => name.Length > 1 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;
}
