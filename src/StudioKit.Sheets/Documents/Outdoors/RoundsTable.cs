using System.Globalization;
using StudioKit.Planning;
using StudioKit.Planning.Session;
using StudioKit.Sheets.Layout;
using StudioKit.Wording;

namespace StudioKit.Sheets.Documents.Outdoors;

/// <summary>A block of the session as a checklist: numbered steps with a box for each round, then lines to write times and frame numbers on.</summary>
internal static class RoundsTable
{
    // More boxes than this leave no room for the steps: more rounds take another sheet.
    private const int MostBoxes = 12;

    // A line for a pencil in the cold (common practice, no source).
    private const double WritingLine = 7;

    /// <summary>The steps.</summary>
    /// <param name="plan">The plan, whose ring numbers the cards.</param>
    /// <param name="block">The block.</param>
    /// <param name="first">Number of its first step [1].</param>
    /// <param name="sizePt">Size of type [pt].</param>
    /// <param name="withTests">Whether the steps of a test are said, which the cards say too.</param>
    public static Table Steps(Plan plan, SessionBlock block, int first, double sizePt, bool withTests)
    {
        var rounds = Math.Min(block.Rounds, MostBoxes);
        return new Table(
            [
                new Column(" ", ColumnKind.Right), new Column("Step"), new Column("Card", ColumnKind.Right),
                .. Enumerable.Range(1, rounds).Select(round => new Column(Text(round), ColumnKind.TickBox)),
                new Column("Time", ColumnKind.Right), new Column("Held"),
            ],
            [.. block.Parts.Select((part, i) => new TableRow(
                [
                    Text(first + i), Said(part.Step, withTests), plan.CardNumber(part.Step.SetUp, part.Step.Framing) is { } card ? Text(card) : "",
                    .. Enumerable.Range(1, rounds).Select(round => IsIn(part.Part, round) ? "tick" : ""),
                    part.Step.Time.Seconds > 0 ? PlanFormat.Minutes(part.Step.Time) : "", part.Step.Held ? "held" : "",
                ]))],
            sizePt);
    }

    /// <summary>A line for each round.</summary>
    /// <param name="block">The block.</param>
    /// <param name="sizePt">Size of type [pt].</param>
    public static Table Lines(SessionBlock block, double sizePt) => new(
        [new Column("Round"), new Column("began"), new Column("ended"), new Column("frames from"), new Column("frames to"), new Column("seen, released, remarks")],
        [.. Enumerable.Range(1, Math.Min(block.Rounds, MostBoxes)).Select(round => new TableRow([Text(round), "", "", "", "", ""]))],
        sizePt)
    { LeastRow = WritingLine };

    /// <summary>How many steps a block has [1].</summary>
    public static int Count(SessionBlock block) => block.Parts.Count();

    private static bool IsIn(RoundPart part, int round) => part switch
    {
        RoundPart.First => round == 1,
        RoundPart.Following => round > 1,
        _ => true,
    };

    private static string Said(SessionStep step, bool withTests) =>
        step.Kind == SessionStepKind.Testing && !withTests
            ? $"{SessionStepText.Of(step)} Check as the card says."
            : $"{SessionStepText.Of(step)} {TestStepText.Of(step.Tests)}".TrimEnd();

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
