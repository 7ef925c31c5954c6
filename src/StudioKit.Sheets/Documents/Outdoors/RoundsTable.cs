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
    /// <param name="told">At which step of the session each test is told, by its words; nothing where the cards alone tell them.</param>
    public static Table Steps(Plan plan, SessionBlock block, int first, double sizePt, IReadOnlyDictionary<string, int>? told = null)
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
                    Text(first + i), Said(part.Step, first + i, told), plan.CardNumber(part.Step.SetUp, part.Step.Framing) is { } card ? Text(card) : "",
                    .. Enumerable.Range(1, rounds).Select(round => IsIn(part.Part, round) ? "tick" : ""),
                    part.Step.Time.Seconds > 0 ? MeasureFormat.Minutes(part.Step.Time) : "", part.Step.Held ? "held" : "",
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

    /// <summary>At which step of a session each test comes first, by its words.</summary>
    /// <param name="session">The session, its steps numbered through all blocks from 1.</param>
    public static IReadOnlyDictionary<string, int> FirstTests(SessionPlan session) => session.Blocks
        .SelectMany(block => block.Parts).Select((part, i) => (Test: TestStepText.Of(part.Step.Tests), Number: i + 1))
        .GroupBy(step => step.Test, StringComparer.Ordinal)
        .ToDictionary(test => test.Key, test => test.First().Number, StringComparer.Ordinal);

    private static bool IsIn(RoundPart part, int round) => part switch
    {
        RoundPart.First => round == 1,
        RoundPart.Following => round > 1,
        _ => true,
    };

    private static string Said(SessionStep step, int number, IReadOnlyDictionary<string, int>? told)
    {
        var test = TestStepText.Of(step.Tests);
        var check = step.Kind != SessionStepKind.Testing || test.Length == 0 ? test
            : told is null ? "Check as the card says."
            : told[test] < number ? $"Check as at step {Text(told[test])}."
            : test;
        return $"{SessionStepText.Of(step)} {check}".TrimEnd();
    }

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);
}
