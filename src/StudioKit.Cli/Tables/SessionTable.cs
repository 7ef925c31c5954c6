using System.Globalization;
using Spectre.Console;
using StudioKit.Planning;
using StudioKit.Planning.Session;
using StudioKit.Wording;

namespace StudioKit.Cli.Tables;

/// <summary>A session as tables on a terminal, one for each block.</summary>
internal static class SessionTable
{
    public static void Write(IAnsiConsole console, SessionPlan session)
    {
        foreach (var block in session.Blocks)
        {
            Write(console, block);
        }

        TableConsole.Notes(console, session.Notes.Prepend(SessionPlan.Rule));
    }

    private static void Write(IAnsiConsole console, SessionBlock block)
    {
        var table = TableConsole.Table($"Session: {SessionText.Title(block)}", "step", "card", "done in", "time", "frames", "flashes");
        table.Columns[3].RightAligned();
        table.Columns[4].RightAligned();
        table.Columns[5].RightAligned();
        foreach (var (part, step) in block.Parts)
        {
            table.AddRow(
                Markup.Escape(SessionStepText.Of(step)), Markup.Escape(step.Card), SessionText.Of(block, part),
                step.Time.Seconds > 0 ? MeasureFormat.Minutes(step.Time) : "", Number(step.Frames), Number(step.Flashes));
        }

        table.AddRow("first round", "", "", MeasureFormat.Minutes(block.First.Time), Number(block.First.Frames), Number(block.First.Flashes));
        if (block.Following is { } following)
        {
            table.AddRow("each following round", "", "", MeasureFormat.Minutes(following.Time), Number(following.Frames), Number(following.Flashes));
        }

        console.Write(table);
        console.WriteLine(SessionText.When(block));
    }

    private static string Number(int count) => count == 0 ? "" : count.ToString(CultureInfo.InvariantCulture);
}
