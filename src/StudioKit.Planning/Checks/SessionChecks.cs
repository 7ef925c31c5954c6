using StudioKit.Planning.Session;

namespace StudioKit.Planning.Checks;

/// <summary>Whether no animal is held too long, whether the cells last the day, and whether the rounds fit their hours.</summary>
internal static class SessionChecks
{
    private const string Practice = "CommonPractice";

    /// <summary>Every check of a plan's session.</summary>
    public static IEnumerable<PlanCheck> Of(SessionPlan session) =>
        session.Subjects.Where(subject => subject.HoldLimit is not null).Select(HoldTime)
            .Concat(session.Flashes.Select(flash => Cells(flash, session.Rounds)))
            .Concat(session.Blocks.Where(block => block.Clock is not null && block.Hours is null).Select(Hours))
            .Concat(session.Blocks.Where(block => block.Hours is not null).Select(block => DayTime(block, block.Hours!)));

    private static PlanCheck DayTime(SessionBlock block, BlockHours hours) => new()
    {
        Kind = PlanCheckKind.DayTime,
        Parts = [.. block.SetUps.Select(setUp => setUp.SetUp), .. block.Only],
        Passed = hours.Chosen is not null,
        Demand = new CheckAmount.Measure(block.Time),
        Capacity = new CheckAmount.Measure(hours.Room),
        Ratio = hours.Room.Seconds > 0 ? block.Time / hours.Room : null,
        SourceKey = "JaniczekDeYoung1987",
        SourceLocator = "mean light of sun, clouds and shade against the windows of the set-ups",
        Remedy = hours.Chosen is null ? DayRemedy(hours) : null,
    };

    // What stands in the way: the rounds, the clock, the subjects' hours, or the light itself.
    private static CheckRemedy DayRemedy(BlockHours hours) => hours switch
    {
        { RoundsThatFit: > 0 } => new(CheckRemedyKind.FewerRounds) { Amount = new CheckAmount.HowMany(hours.RoundsThatFit), Keys = ["session.rounds", "set-ups.clock", "set-ups.light-window"] },
        { WithoutClock.Count: > 0 } => new(CheckRemedyKind.OtherHours) { Amount = new CheckAmount.Times(hours.WithoutClock), Keys = ["set-ups.clock"] },
        { WithoutActivity.Count: > 0 } => new(CheckRemedyKind.OtherSubjects) { Amount = new CheckAmount.Times(hours.WithoutActivity), Keys = ["set-ups.subjects", "subjects.active"] },
        _ => new(CheckRemedyKind.OtherLight) { Amount = new CheckAmount.Brightness(hours.Expected), Keys = ["set-ups.light-window", "set-ups.ambient", "site.date"] },
    };

    private static PlanCheck Hours(SessionBlock block) => new()
    {
        Kind = PlanCheckKind.Hours,
        Parts = [.. block.SetUps.Select(setUp => setUp.SetUp)],
        Passed = block.Time <= block.Clock!.Length,
        Demand = new CheckAmount.Measure(block.Time),
        Capacity = new CheckAmount.Measure(block.Clock.Length),
        Ratio = block.Time / block.Clock.Length,
        SourceKey = Practice,
        SourceLocator = "the kit's hours and times",
        Remedy = block.Time <= block.Clock.Length ? null : new CheckRemedy(CheckRemedyKind.FewerRounds) { Keys = ["session.rounds", "set-ups.clock"] },
    };

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
