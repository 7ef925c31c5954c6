namespace StudioKit.Planning.Checks;

/// <summary>Whether no animal is held too long, and whether the cells last the day.</summary>
internal static class SessionChecks
{
    private const string Practice = "CommonPractice";

    /// <summary>Every check of a plan's session.</summary>
    public static IEnumerable<PlanCheck> Of(SessionPlan session) =>
        session.Subjects.Where(subject => subject.HoldLimit is not null).Select(HoldTime).Concat(session.Flashes.Select(flash => Cells(flash, session.Rounds)));

    private static PlanCheck HoldTime(SessionSubject subject) => new()
    {
        Name = $"Hold time, {subject.Name}",
        Passed = subject.WithinLimit,
        Demand = PlanFormat.Minutes(subject.HoldTime),
        Capacity = PlanFormat.Minutes(subject.HoldLimit!.Value),
        Ratio = subject.HoldTime / subject.HoldLimit.Value,
        SourceKey = Practice,
        SourceLocator = "the kit's limit, or the handling guide's",
        Remedy = subject.WithinLimit ? "" : "Fewer frames or set-ups for it; do not hold one animal through a change of set-up, photograph another in the next.",
    };

    private static PlanCheck Cells(FlashUse flash, int rounds) => new()
    {
        Name = $"Cells of {flash.Flash}",
        Passed = flash.Enough,
        Demand = FormattableString.Invariant($"{Count(flash.SetsNeeded)} for {flash.Flashes} flashes{(rounds > 1 ? $" in {rounds} rounds" : "")}"),
        Capacity = FormattableString.Invariant($"{Count(flash.SetsCarried)}, {flash.FlashesCarried} flashes at that power"),
        Ratio = flash.FlashesCarried > 0 ? (double)flash.Flashes / flash.FlashesCarried : null,
        SourceKey = Practice,
        SourceLocator = "energy of a flash goes with its power; a fifth of each set kept in reserve",
        Remedy = flash.Enough ? "" : FormattableString.Invariant($"Carry {flash.SetsNeeded - flash.SetsCarried} more, or take fewer frames."),
    };

    private static string Count(int sets) => FormattableString.Invariant($"{sets} {(sets == 1 ? "set" : "sets")}");
}
