using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Session;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents;

/// <summary>The session plan: steps to tick off, how long each animal is held, flashes and cells.</summary>
internal static class SessionSheet
{
    public static SheetDocument Make(Plan plan, SessionPlan session, Stamp stamp, PageSetup page) => new(
        "Session plan",
        stamp,
        page,
        [
            new Heading("Session plan"),
            new Paragraph(Summary(session)),
            new Paragraph(SessionPlan.Rule, TypeScale.Small),
            .. session.Notes.Count == 0 ? (Block[])[] : [new ItemList(session.Notes, ItemMarker.Dot, TypeScale.Small)],
            .. CautionBlocks.Of(plan, CautionSheet.Session, kind => kind == CautionKind.ProtectedHere),
            .. session.Blocks.SelectMany(Block),
            new Heading("Time in the hand", 2),
            Held(session),
            new Heading("Flashes and cells", 2),
            Cells(session),
            new Heading("Cautions", 2),
            new Caution(UsualCautions.Animals),
            new Caution(UsualCautions.Flash),
            .. CautionBlocks.Of(plan, CautionSheet.Session, kind => kind != CautionKind.ProtectedHere),
        ]);

    private static string Summary(SessionPlan session)
    {
        var blocks = session.Blocks.Count == 1 ? "one light" : FormattableString.Invariant($"{session.Blocks.Count} blocks of one light each");
        var rounds = session.Rounds == 1 ? "one round" : FormattableString.Invariant($"{session.Rounds} rounds");
        return FormattableString.Invariant(
            $"{session.Subjects.Count} subjects, {blocks}, {rounds}, {PlanFormat.Minutes(session.Time)} in all; {session.Changes} changes of set-up in the first rounds{(session.ProvenFewest ? ", the fewest there can be" : "")}.");
    }

    private static IEnumerable<Block> Block(SessionBlock block, int place)
    {
        yield return new Heading(FormattableString.Invariant($"{place + 1}  {SessionText.Title(block)}"), 2);
        yield return new Paragraph(SessionText.When(block), TypeScale.Small);
        yield return Steps(block);
    }

    private static Table Steps(SessionBlock block) => new(
        [
            new Column(" ", ColumnKind.TickBox), new Column("Step"), new Column("Card"), new Column("Done in"), new Column("Time", ColumnKind.Right),
            new Column("Frames", ColumnKind.Right), new Column("Flashes", ColumnKind.Right), new Column("Held"),
        ],
        [
            .. block.Parts.Select(part => Row(SessionText.Of(block, part.Part), part.Step)),
            Total("First round", block.First),
            .. block.Following is { } following ? (TableRow[])[Total("Each following round", following)] : [],
        ]);

    private static TableRow Row(string rounds, SessionStep step) => new(
        [
            "tick", $"{SessionStepText.Of(step)} {TestStepText.Of(step.Tests)}".TrimEnd(), step.Card, rounds,
            step.Time.Seconds > 0 ? PlanFormat.Minutes(step.Time) : "", Count(step.Frames), Count(step.Flashes), step.Held ? "held" : "",
        ]);

    private static TableRow Total(string name, SessionRound round) =>
        new(["", name, "", "", PlanFormat.Minutes(round.Time), Count(round.Frames), Count(round.Flashes), ""], Total: true);

    private static Table Held(SessionPlan session) => new(
        [new Column("Subject"), new Column("Held at a time", ColumnKind.Right), new Column("At most", ColumnKind.Right), new Column("Verdict")],
        [.. session.Subjects.Select(subject => new TableRow(
            [
                subject.Name,
                subject.HoldTime.Seconds > 0 ? PlanFormat.Minutes(subject.HoldTime) : "not held",
                subject.HoldLimit is { } limit ? PlanFormat.Minutes(limit) : "",
                subject.WithinLimit ? "within its limit" : "TOO LONG: fewer frames or set-ups",
            ]))]);

    private static Table Cells(SessionPlan session) => new(
        [
            new Column("Flash"), new Column("Flashes in the day", ColumnKind.Right), new Column("As full power", ColumnKind.Decimal),
            new Column("Sets used", ColumnKind.Right), new Column("Sets carried", ColumnKind.Right), new Column("Verdict"),
        ],
        [.. session.Flashes.Select(use => new TableRow(
            [
                use.Flash, Count(use.Flashes), use.FullPowerFlashes.ToString("0.#", CultureInfo.InvariantCulture), Count(use.SetsNeeded), Count(use.SetsCarried),
                use.Enough ? "lasts the day" : "TOO FEW: carry more",
            ]))]);

    private static string Count(int count) => count == 0 ? "" : count.ToString(CultureInfo.InvariantCulture);
}
