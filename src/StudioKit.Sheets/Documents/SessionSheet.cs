using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Cautions;
using StudioKit.Planning.Session;
using StudioKit.Sheets.Documents.Outdoors;
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
            new CautionList([.. CautionBlocks.Listed(plan, CautionSheet.Session), ("Animals", UsualCautions.Animals), ("Flashes", UsualCautions.Flash)], TypeScale.Small),
            .. Blocks(plan, session),
            new InColumns(new Stack(
                [
                    new Heading("Time in the hand", 2),
                    Held(session),
                    new Heading("Cells", 2),
                    Cells(session),
                    new Heading("Frames and flashes", 2),
                    Frames(session),
                ])),
            new Heading("How the order was found", 2),
            new Paragraph(SessionPlan.Rule, TypeScale.Small),
            .. session.Notes.Count == 0 ? (Block[])[] : [new ItemList(session.Notes, ItemMarker.Dot, TypeScale.Small)],
        ]);

    private static string Summary(SessionPlan session)
    {
        var blocks = session.Blocks.Count == 1 ? "one light" : FormattableString.Invariant($"{session.Blocks.Count} blocks of one light each");
        var rounds = session.Rounds == 1 ? "one round" : FormattableString.Invariant($"{session.Rounds} rounds");
        return FormattableString.Invariant(
            $"{session.Subjects.Count} subjects, {blocks}, {rounds}, {MeasureFormat.Minutes(session.Time)} in all; {session.Changes} changes of set-up in the first rounds{(session.ProvenFewest ? ", the fewest there can be" : "")}.");
    }

    private static IEnumerable<Block> Blocks(Plan plan, SessionPlan session)
    {
        var first = 1;
        var told = RoundsTable.FirstTests(session);
        foreach (var (block, place) in session.Blocks.Select((block, place) => (block, place)))
        {
            yield return new Heading(FormattableString.Invariant($"{place + 1}  {SessionText.Title(block)}"), 2);
            yield return new Paragraph(SessionText.When(block), TypeScale.Small);
            yield return RoundsTable.Steps(plan, block, first, TypeScale.Small, told);
            yield return RoundsTable.Lines(block, TypeScale.Small);
            first += RoundsTable.Count(block);
        }
    }

    private static Table Frames(SessionPlan session) => new(
        [new Column("Block"), new Column("Round"), new Column("Time", ColumnKind.Right), new Column("Frames", ColumnKind.Right), new Column("Flashes", ColumnKind.Right)],
        [
            .. session.Blocks.SelectMany((block, place) => new[] { Row(block, place, "the first", block.First) }
                .Concat(block.Following is { } following ? [Row(block, place, block.Rounds == 2 ? "the second" : "each of the others", following)] : [])),
            new TableRow(["Day", "", MeasureFormat.Minutes(session.Time), Count(session.Frames), Count(session.Blocks.Sum(block => block.Flashes))], Total: true),
        ],
        TypeScale.Small);

    private static TableRow Row(SessionBlock block, int place, string round, SessionRound made) => new(
        [FormattableString.Invariant($"{place + 1}  {SessionText.Title(block)}"), round, MeasureFormat.Minutes(made.Time), Count(made.Frames), Count(made.Flashes)]);

    private static Table Held(SessionPlan session) => new(
        [new Column("Subject"), new Column("Held at a time", ColumnKind.Right), new Column("At most", ColumnKind.Right), new Column("Verdict")],
        [.. session.Subjects.Select(subject => new TableRow(
            [
                subject.Name,
                subject.HoldTime.Seconds > 0 ? MeasureFormat.Minutes(subject.HoldTime) : "not held",
                subject.HoldLimit is { } limit ? MeasureFormat.Minutes(limit) : "",
                subject.WithinLimit ? "within its limit" : "TOO LONG: fewer frames or set-ups",
            ]))],
        TypeScale.Small);

    private static Table Cells(SessionPlan session) => new(
        [
            new Column("Flash"), new Column("Flashes in the day", ColumnKind.Right), new Column("As full power", ColumnKind.Decimal),
            new Column("Sets used", ColumnKind.Right), new Column("Sets carried", ColumnKind.Right), new Column("Verdict"),
        ],
        [.. session.Flashes.Select(use => new TableRow(
            [
                use.Flash, Count(use.Flashes), use.FullPowerFlashes.ToString("0.#", CultureInfo.InvariantCulture), Count(use.SetsNeeded), Count(use.SetsCarried),
                use.Enough ? "lasts the day" : "TOO FEW: carry more",
            ]))],
        TypeScale.Small);

    private static string Count(int count) => count == 0 ? "" : count.ToString(CultureInfo.InvariantCulture);
}
