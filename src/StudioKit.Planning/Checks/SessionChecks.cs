using StudioKit.Planning.Session;

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
        Kind = PlanCheckKind.HoldTime,
        Parts = [subject.Name],
        Passed = subject.WithinLimit,
        Demand = new CheckAmount.Measure(subject.HoldTime),
        Capacity = new CheckAmount.Measure(subject.HoldLimit!.Value),
        Ratio = subject.HoldTime / subject.HoldLimit.Value,
        SourceKey = Practice,
        SourceLocator = "the kit's limit, or the handling guide's",
        Remedy = subject.WithinLimit ? null : new CheckRemedy(CheckRemedyKind.HoldShorter) { Keys = ["subjects.frames", "set-ups.subjects"] },
    };

    private static PlanCheck Cells(FlashUse flash, int rounds) => new()
    {
        Kind = PlanCheckKind.Cells,
        Parts = [flash.Flash],
        Passed = flash.Enough,
        Demand = new CheckAmount.CellSets(flash.SetsNeeded, flash.Flashes, rounds),
        Capacity = new CheckAmount.CellSets(flash.SetsCarried, flash.FlashesCarried, rounds),
        Ratio = flash.FlashesCarried > 0 ? (double)flash.Flashes / flash.FlashesCarried : null,
        SourceKey = Practice,
        SourceLocator = "energy of a flash goes with its power; a fifth of each set kept in reserve",
        Remedy = flash.Enough ? null : new CheckRemedy(CheckRemedyKind.MoreCells)
        {
            Amount = new CheckAmount.HowMany(flash.SetsNeeded - flash.SetsCarried),
            Keys = ["flashes.spare-sets"],
        },
    };
}
